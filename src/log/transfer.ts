/** The log as one JSON document, out and in; its JSON Schema is `public/pegscribe-log.schema.json`. */
import * as v from "valibot";
import { transferWords } from "../words/transfer.ts";
import { boundedJson } from "./bounded-json.ts";
import { eventSchema, type LogEvent } from "./event.ts";
import { inTime } from "./patience.ts";
import { isPossible } from "./possible.ts";
import { Refusal } from "./refusal.ts";
import type { LogStore } from "./store.ts";
import { toTrouble } from "./trouble.ts";

const FORMAT = "pegscribe-log";
const VERSION = 1;

export const documentSchema = v.object({
  format: v.literal(FORMAT),
  version: v.literal(VERSION),
  /** Milliseconds since the epoch. */
  exportedAt: v.number(),
  events: v.array(eventSchema),
  /** Records that are no events any more, as they were found. */
  damaged: v.array(v.object({ record: v.unknown(), fault: v.string() })),
  /** Why the stored log is not in here, where it could not be read. */
  incomplete: v.optional(v.string()),
  /** How the phone was set, where all of the log is in here. */
  settings: v.optional(v.unknown()),
});

export type LogDocument = v.InferOutput<typeof documentSchema>;

/** A log of many years takes a phone some seconds to read (a guess). */
const READING_PATIENCE_MS = 10_000;

export interface ExportOptions {
  store: LogStore;
  /** Events that are only in memory. */
  unsaved: readonly LogEvent[];
  /** Milliseconds since the epoch. */
  now: number;
  /** Leaves all other sessions out. */
  session?: string | undefined;
  settings?: unknown;
}

/**
 * Everything there is, or one session of it, to be written with `JSON.stringify`. Never fails: if
 * the store cannot be read, what is unsaved still gets out.
 */
export async function exportLog(options: ExportOptions): Promise<LogDocument> {
  const { store, unsaved, now, session, settings } = options;
  const isWanted = (event: LogEvent) => session === undefined || event.session === session;
  const head = {
    format: FORMAT,
    version: VERSION,
    exportedAt: now,
    ...(settings !== undefined && { settings }),
  } as const;
  try {
    const reading = () => readStored(store, session);
    const { stored, damaged } = await inTime(reading, READING_PATIENCE_MS);
    return {
      ...head,
      events: unite(stored, unsaved.filter(isWanted)),
      damaged: damaged.map(({ record, fault }) => ({ record: writable(record), fault })),
    };
  } catch (cause) {
    const incomplete = toTrouble(cause).message;
    return { ...head, events: unsaved.filter(isWanted), damaged: [], incomplete };
  }
}

/**
 * A document as it was written.
 * @param text the file's content
 * @throws Refusal
 */
export function readDocument(text: string): LogDocument {
  const document = boundedJson(text);
  const head = v.safeParse(
    v.looseObject({ format: v.literal(FORMAT), version: v.number() }),
    document,
  );
  if (!head.success) {
    const wasOurs = document === undefined && text.slice(0, 200).includes(`"${FORMAT}"`);
    throw new Refusal(wasOurs ? transferWords.cutOff : transferWords.notOurs);
  }
  if (head.output.version > VERSION) throw new Refusal(transferWords.newer);
  const read = v.safeParse(documentSchema, document, { abortEarly: true });
  if (read.success) return read.output;
  throw new Refusal(transferWords.damagedAt(v.getDotPath(read.issues[0]) ?? ""));
}

export interface Merged {
  added: number;
  /** Events that were here already. */
  known: number;
  /** Sessions that were taken out here on purpose, which the merging leaves out. */
  takenOut: string[];
}

/** A plan with hundreds of words of the angler's own has fewer parts; many more stop a phone. */
const MOST_PARTS = 3000;
const LETTERS_PER_PART = 1000;

/**
 * Adds the events that the store does not hold, all or nothing; doing it again adds nothing.
 * @throws Refusal, or StoreTrouble if storing fails
 */
export async function mergeEvents(store: LogStore, events: readonly LogEvent[]): Promise<Merged> {
  const odd = events.findIndex((event) => !isPossible(event));
  if (odd >= 0) throw new Refusal(transferWords.impossible(odd + 1));
  const overfull = events.findIndex((event) => partsIn(event) > MOST_PARTS);
  if (overfull >= 0) throw new Refusal(transferWords.overfull(overfull + 1));
  const removals = new Set(await store.removals());
  const left = events.filter(({ session }) => removals.has(session));
  const added = await store.put(events);
  return {
    added: added.length,
    known: events.length - left.length - added.length,
    takenOut: [...new Set(left.map(({ session }) => session))],
  };
}

/** How many values, names of fields and thousands of letters are in it, however deep. */
function partsIn(value: unknown): number {
  if (typeof value === "string") return 1 + value.length / LETTERS_PER_PART;
  if (typeof value !== "object" || value === null) return 1;
  let parts = 1;
  for (const [name, part] of Object.entries(value)) {
    parts += name.length / LETTERS_PER_PART + partsIn(part);
  }
  return parts;
}

async function readStored(store: LogStore, session: string | undefined) {
  if (session !== undefined) return { stored: await store.session(session), damaged: [] };
  // In this order: reading the events is what finds damaged ones.
  const stored = await store.everything();
  return { stored, damaged: await store.damaged() };
}

/** Each event once; one that is stored and unsaved has just been stored. */
function unite(stored: readonly LogEvent[], unsaved: readonly LogEvent[]): LogEvent[] {
  const ids = new Set(stored.map((event) => event.id));
  return [...stored, ...unsaved.filter((event) => !ids.has(event.id))];
}

/** A damaged record can hold what JSON cannot. */
function writable(record: unknown): unknown {
  try {
    JSON.stringify(record);
    return record;
  } catch {
    return String(record);
  }
}
