/** The whole log as one JSON document, out and in. */
import * as v from "valibot";
import { eventSchema, type LogEvent } from "./event.ts";
import type { LogStore } from "./store.ts";
import { toTrouble } from "./trouble.ts";

const FORMAT = "pegscribe-log";
const VERSION = 1;

const documentSchema = v.object({
  format: v.literal(FORMAT),
  version: v.literal(VERSION),
  /** Milliseconds since the epoch. */
  exportedAt: v.number(),
  events: v.array(eventSchema),
  /** Records that are no events any more, as they were found. */
  damaged: v.array(v.object({ record: v.unknown(), fault: v.string() })),
  /** Why the stored log is not in here, where it could not be read. */
  incomplete: v.optional(v.string()),
});

export type LogDocument = v.InferOutput<typeof documentSchema>;

export interface Imported {
  added: number;
  /** Events that were here already. */
  known: number;
  /** Damaged records, which stay behind in the file. */
  damaged: number;
}

/** A file that is not taken; the message is a sentence for the angler, and nothing has changed. */
export class ImportRefused extends Error {
  override readonly name = "ImportRefused";
}

/**
 * Everything there is, to be written with `JSON.stringify`. Never fails: if the store cannot be read,
 * what is unsaved still gets out.
 * @param unsaved events that are only in memory
 * @param now milliseconds since the epoch
 */
export async function exportLog(
  store: LogStore,
  unsaved: readonly LogEvent[],
  now: number,
): Promise<LogDocument> {
  const head = { format: FORMAT, version: VERSION, exportedAt: now } as const;
  try {
    // In this order: reading the events is what finds damaged ones.
    const stored = await store.everything();
    const damaged = await store.damaged();
    return {
      ...head,
      events: unite(stored, unsaved),
      damaged: damaged.map(({ record, fault }) => ({ record: writable(record), fault })),
    };
  } catch (cause) {
    const incomplete = toTrouble(cause).message;
    return { ...head, events: [...unsaved], damaged: [], incomplete };
  }
}

/**
 * Adds what a document holds and the store does not, all or nothing; doing it again adds nothing.
 * @param text the file's content
 * @throws ImportRefused, or StoreTrouble if storing fails
 */
export async function importLog(store: LogStore, text: string): Promise<Imported> {
  const { events, damaged } = readDocument(text);
  const added = await store.put(events);
  return { added: added.length, known: events.length - added.length, damaged: damaged.length };
}

function readDocument(text: string): LogDocument {
  const document = parse(text);
  const head = v.safeParse(
    v.looseObject({ format: v.literal(FORMAT), version: v.number() }),
    document,
  );
  if (!head.success) throw new ImportRefused("This file is not a Pegscribe log.");
  if (head.output.version > VERSION) {
    throw new ImportRefused(
      "This file comes from a newer Pegscribe. Update this one, then try again.",
    );
  }
  const read = v.safeParse(documentSchema, document, { abortEarly: true });
  if (read.success) return read.output;
  const [issue] = read.issues;
  throw new ImportRefused(
    `This Pegscribe log is damaged at ${v.getDotPath(issue)} (${issue.message}). Nothing was taken from it.`,
  );
}

function parse(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
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
