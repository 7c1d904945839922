/**
 * An event as a row and a row as an event. Everything is in the row: what has no column of its own,
 * of whatever kind, stands as JSON in the last one.
 */
import { boundedJson } from "../../log/bounded-json.ts";
import type { LogEvent } from "../../log/event.ts";
import { type Cell, utcMoment, utcText } from "./cells.ts";

/** The first column's name and what stands in it: by it a table is known, and its version. */
export const EVENTS_MARK = "pegscribe_events";
export const EVENTS_VERSION = 1;

type Fields = Record<string, unknown>;

/** How a field stands in its column; `deeper_by` and its like keep numbers from starting with "-". */
type Sort = "text" | "number" | "flag" | "plus" | "minus";

const FIELDS: readonly (readonly [header: string, field: string, sort: Sort])[] = [
  ["species", "species", "text"],
  ["count", "count", "number"],
  ["weight_g", "weightG", "number"],
  ["length_mm", "lengthMm", "number"],
  ["approximate", "approx", "flag"],
  ["foul_hooked", "foul", "flag"],
  ["lost_by", "cause", "text"],
  ["sign", "sort", "text"],
  ["rig", "rig", "text"],
  ["depth_mm", "depthMm", "number"],
  ["deeper_by_mm", "depthByMm", "plus"],
  ["shallower_by_mm", "depthByMm", "minus"],
  ["distance_mm", "distanceMm", "number"],
  ["further_by_mm", "distanceByMm", "plus"],
  ["closer_by_mm", "distanceByMm", "minus"],
  ["hook_size", "hook", "number"],
  ["bait", "bait", "text"],
  ["bait_note", "baitNote", "text"],
  ["above_float_mm", "lashMm", "number"],
  ["above_float_longer_by_mm", "lashByMm", "plus"],
  ["above_float_shorter_by_mm", "lashByMm", "minus"],
  ["feed_times", "times", "number"],
  ["feed_g", "amountG", "number"],
  ["feed_how", "how", "text"],
  ["number", "number", "number"],
  ["wind", "wind", "text"],
  ["sky", "sky", "text"],
  ["water_degrees_c", "waterC", "number"],
  ["air_degrees_c", "airC", "number"],
  ["note", "text", "text"],
  ["session_act", "act", "text"],
];

export const EVENT_HEADERS: readonly string[] = [
  EVENTS_MARK,
  ...["event_id", "session_id", "device_id", "sequence", "time_utc", "group_id", "verdict"],
  ...["heard_by", "heard", "heard_alternatives_json", "heard_confidence"],
  ...["event", "about_event_id", "net", "scales_g", "statement"],
  ...FIELDS.map(([header]) => header),
  "rest_json",
];

export function eventRow(event: LogEvent): Cell[] {
  const { id, session, device, seq, at, group, verdict, heard } = event;
  const { kind, target, net, weightG, statement, ...more } = event.body as Fields;
  const { set, ...rest } = more;
  const { kind: stated, ...fields } = (statement ?? set ?? {}) as Fields;
  return [
    ...[EVENTS_VERSION, id, session, device, seq, utcText(at), group, verdict],
    ...[heard?.by, heard?.text, heard?.alternatives && JSON.stringify(heard.alternatives)],
    heard?.confidence,
    ...([kind, target, net, weightG, stated] as Cell[]),
    ...FIELDS.map(([, field, sort]) => cellOf(fields[field], sort)),
    leftOver({ ...rest, fields: withoutColumns(fields) }),
  ];
}

const COLUMNED = new Set(FIELDS.map(([, field]) => field));

const withoutColumns = (fields: Fields): Fields =>
  Object.fromEntries(Object.entries(fields).filter(([name]) => !COLUMNED.has(name)));

function leftOver({ fields, ...rest }: { fields: Fields } & Fields): Cell {
  const all = Object.keys(fields).length > 0 ? { ...rest, fields } : rest;
  return Object.keys(all).length > 0 ? JSON.stringify(all) : undefined;
}

function cellOf(value: unknown, sort: Sort): Cell {
  if (value === undefined) return undefined;
  if (sort === "flag") return value === true ? "yes" : undefined;
  if (sort === "plus") return Number(value) >= 0 ? Number(value) : undefined;
  if (sort === "minus") return Number(value) < 0 ? -Number(value) : undefined;
  return value as Cell;
}

/** An event to be checked by the schema. @param row cells by header, as they were before `safeCell` */
export function eventOf(row: Readonly<Record<string, string>>): unknown {
  const text = (header: string) => row[header] || undefined;
  return present({
    v: 1,
    id: text("event_id"),
    session: text("session_id"),
    device: text("device_id"),
    seq: numberIn(text("sequence")),
    at: utcMoment(text("time_utc") ?? ""),
    group: text("group_id"),
    verdict: text("verdict"),
    heard: heardIn(row),
    body: bodyIn(row),
  });
}

/** None, which the schema refuses, where a part can't be read: without it the rest could mean something else. */
function bodyIn(row: Readonly<Record<string, string>>): Fields | undefined {
  const { rest_json, event: kind, about_event_id, net, scales_g, statement } = row;
  const more = rest_json ? jsonIn(rest_json) : {};
  if (!isFields(more)) return undefined;
  const { fields = {}, ...rest } = more;
  if (!isFields(fields)) return undefined;
  const said = { ...fields, ...fieldsIn(row) };
  return present({
    ...rest,
    kind,
    target: about_event_id || undefined,
    net: numberIn(net),
    weightG: numberIn(scales_g),
    statement: statement ? { kind: statement, ...said } : undefined,
    set: kind === "amend" ? said : undefined,
  });
}

function fieldsIn(row: Readonly<Record<string, string>>): Fields {
  const fields: Fields = {};
  for (const [header, field, sort] of FIELDS) {
    const cell = row[header];
    if (!cell) continue;
    if (sort === "text") fields[field] = cell;
    else if (sort === "flag") fields[field] = cell === "yes";
    else fields[field] = (sort === "minus" ? -1 : 1) * Number(cell);
  }
  return fields;
}

/** A touch has a `heard` of no words: it is there wherever it is said by what. */
function heardIn(row: Readonly<Record<string, string>>): Fields | undefined {
  const { heard_by, heard, heard_alternatives_json, heard_confidence } = row;
  if (!heard_by) return undefined;
  return present({
    by: heard_by,
    text: heard ?? "",
    alternatives: heard_alternatives_json ? jsonIn(heard_alternatives_json) : undefined,
    confidence: numberIn(heard_confidence),
  });
}

const numberIn = (cell: string | undefined): number | undefined =>
  cell ? Number(cell) : undefined;

/** Where it is no JSON, the text that it is, which nothing takes for a list or for fields. */
const jsonIn = (cell: string): unknown => boundedJson(cell) ?? cell;

const isFields = (value: unknown): value is Fields =>
  typeof value === "object" && value !== null && !Array.isArray(value);

const present = (fields: Fields): Fields =>
  Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined));
