/** An entry's history in words. */
import { applyAmend } from "../../log/amend.ts";
import { changedFields } from "../../log/correction.ts";
import type { EntryStatement, Heard, LogEvent } from "../../log/event.ts";
import { splitFrom } from "../../log/pieces.ts";
import type { Entry } from "../../log/session.ts";
import { formatClock } from "../../ui/format.ts";
import { reviewWords } from "../../words/review.ts";
import type { Settings } from "../app.ts";
import { FIELDS } from "./fields.ts";
import { steppingOf } from "./steppers.ts";
import { lengthStyleOf, sayShown, weightStyleOf } from "./words.ts";

const { history: words } = reviewWords;

export interface HistoryLine {
  id: string;
  /** When it was said or done, milliseconds since the epoch. */
  at: number;
  text: string;
  /** Tells one phone from another. */
  device: string;
}

/** One line for each event that made the entry what it is, oldest first. */
export function historyLines({ history }: Entry, settings: Settings): HistoryLine[] {
  let statement: EntryStatement | undefined;
  return history.map((event) => {
    const before = statement;
    statement = after(event, before);
    const text = lineOf(event, before, statement, settings);
    return { id: event.id, at: event.at, text, device: event.device.slice(-4) };
  });
}

/** The statement once this event is taken into account. */
function after({ body }: LogEvent, before: EntryStatement | undefined) {
  if (body.kind === "entry" || body.kind === "replace") return body.statement;
  return body.kind === "amend" && before ? applyAmend(before, body.set, body.clear) : before;
}

function lineOf(
  { body, heard, ...event }: LogEvent,
  before: EntryStatement | undefined,
  now: EntryStatement | undefined,
  settings: Settings,
): string {
  const said = (one: EntryStatement) => sayShown(one, settings);
  switch (body.kind) {
    case "entry": {
      const isPiece = splitFrom({ body, ...event }) !== undefined;
      const how = isPiece ? words.splitOff : heardHow(heard);
      return `${how}, ${words.readAs(said(body.statement))}`;
    }
    case "heard":
      return heardHow(heard);
    case "replace":
      return doneHow(words.nowReadAs(said(body.statement)), heard);
    case "settle":
      return doneHow(words.settled, heard);
    case "withdraw":
      return doneHow(words.takenOut, heard);
    case "amend": {
      const changes = before && now ? changesOf(before, now, settings) : [];
      const moved = body.at === undefined ? [] : [words.moved(formatClock(body.at))];
      const all = [...changes, ...moved];
      return doneHow(all.join("; ") || words.kept, heard);
    }
    default:
      return words.kept;
  }
}

/** "Weight: 3 lb, was 2 lb", for each field that differs. */
function changesOf(before: EntryStatement, now: EntryStatement, settings: Settings): string[] {
  const changed = changedFields(before, now);
  return FIELDS[now.kind]
    .filter(({ name }) => changed.includes(name))
    .map((field) => {
      const value = (of: EntryStatement) => shown(of, field, settings);
      return words.changed(field.label, value(now), value(before));
    });
}

function shown(
  statement: EntryStatement,
  { name, is }: (typeof FIELDS)[EntryStatement["kind"]][number],
  settings: Settings,
): string {
  const value = (statement as Readonly<Record<string, unknown>>)[name];
  if (value === undefined) return words.gone;
  if (value === true) return words.yes;
  const stepping = steppingOf(is, {
    weight: weightStyleOf(statement, settings.weight),
    length: lengthStyleOf(statement, settings.length),
  });
  return stepping && typeof value === "number" ? stepping.format(value) : String(value);
}

function heardHow(heard: Heard | undefined): string {
  if (!heard || heard.by === "touched") return words.heard.touched;
  return words.heard[heard.by](heard.text);
}

function doneHow(what: string, heard: Heard | undefined): string {
  const by = !heard || heard.by === "touched" ? words.by.touched : words.by[heard.by](heard.text);
  return `${what}; ${by}`;
}
