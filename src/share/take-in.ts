/** Files from outside: the log as JSON or as a table of events, or a summary that somebody sent. */
import type { LogEvent } from "../log/event.ts";
import { Refusal } from "../log/refusal.ts";
import type { LogStore } from "../log/store.ts";
import { type Merged, mergeEvents, readDocument } from "../log/transfer.ts";
import { sharedWords } from "../words/shared.ts";
import { transferWords } from "../words/transfer.ts";
import { EVENTS_MARK } from "./csv/event-columns.ts";
import { readEventsCsv } from "./csv/events-csv.ts";
import { FISH_MARK } from "./csv/fish-csv.ts";
import { codeIn, LONGEST_CODE } from "./link/link.ts";

const BYTES_PER_MB = 1_000_000;
/** A season of 300 sessions of 500 events is some 70 MB as JSON; phones open no more than this. */
const MOST_MB = 80;

export interface TakenLog extends Merged {
  sessions: number;
  /** Damaged records, which stay behind in the file. */
  damaged: number;
  /** How the phone that wrote the file was set; for the caller to check. */
  settings?: unknown;
}

export type TakenIn = { log: TakenLog } | { shared: string };

/**
 * All of a file is taken in, or nothing; taking it in again adds nothing.
 * @throws Refusal, or StoreTrouble if storing fails
 */
export async function takeIn(store: LogStore, file: Blob): Promise<TakenIn> {
  if (file.size > MOST_MB * BYTES_PER_MB) {
    throw new Refusal(transferWords.tooBig(Math.round(file.size / BYTES_PER_MB), MOST_MB));
  }
  const text = await textOf(file);
  const form = formOf(text);
  const code = form === "other" ? codeIn(text) : undefined;
  if (code !== undefined) return { shared: inLength(code) };
  const { events, ...beside } = read(text, form);
  const sessions = new Set(events.map(({ session }) => session)).size;
  return { log: { ...beside, sessions, ...(await mergeEvents(store, events)) } };
}

/** It goes into the address to be opened, where a browser is busy for seconds with a far longer one. */
function inLength(code: string): string {
  if (code.length > LONGEST_CODE) throw new Refusal(sharedWords.tooMuch);
  return code;
}

interface Read extends Pick<TakenLog, "damaged" | "settings"> {
  events: readonly LogEvent[];
}

type Form = "json" | "table" | "other";

/** A log with a link in one of its notes is still a log. */
function formOf(text: string): Form {
  if (/^\s*[{[]/.test(text)) return "json";
  const firstLine = firstLineOf(text);
  return [EVENTS_MARK, FISH_MARK].some((mark) => firstLine.includes(mark)) ? "table" : "other";
}

const firstLineOf = (text: string): string => /^.*/.exec(text)?.[0] ?? "";

function read(text: string, form: Form): Read {
  if (form === "json" || (form === "other" && !/[,;\t]/.test(firstLineOf(text)))) {
    const { events, damaged, settings } = readDocument(text);
    return { events, damaged: damaged.length, ...(settings !== undefined && { settings }) };
  }
  return { events: readEventsCsv(text), damaged: 0 };
}

/** The text of a file, whose first bytes say whether it is in one of the forms of UTF-16. */
async function textOf(file: Blob): Promise<string> {
  let bytes: Uint8Array;
  try {
    bytes = new Uint8Array(await file.arrayBuffer());
  } catch {
    throw new Refusal(transferWords.unreadable);
  }
  const [first, second] = bytes;
  const isWide = (first === 0xff && second === 0xfe) || (first === 0xfe && second === 0xff);
  try {
    const form = isWide ? (first === 0xff ? "utf-16le" : "utf-16be") : "utf-8";
    return new TextDecoder(form, { fatal: true }).decode(bytes);
  } catch {
    throw new Refusal(transferWords.notText);
  }
}
