/** Files of the log, for keeping, for a spreadsheet, or for another phone. */
import type { LogEvent } from "../log/event.ts";
import { foldSession } from "../log/fold.ts";
import type { LogStore } from "../log/store.ts";
import { exportLog, type LogDocument } from "../log/transfer.ts";
import { eventsCsv } from "./csv/events-csv.ts";
import { fishCsv } from "./csv/fish-csv.ts";
import { dayName } from "./file-name.ts";

/** The log whole, or one row an event, or one row a fish. */
export type LogForm = "json" | "events" | "fish";

export interface LogFile {
  file: File;
  sessions: number;
  events: number;
  /** Why what is stored is not in it, where it could not be read. */
  incomplete?: string;
}

interface LogFileOptions {
  store: LogStore;
  /** Events that are only in memory. */
  unsaved: readonly LogEvent[];
  /** Milliseconds since the epoch. */
  now: number;
  /** Leaves all other sessions out. */
  session?: string | undefined;
  settings?: unknown;
}

const FILES = {
  json: { name: "log", ending: "json", type: "application/json" },
  events: { name: "events", ending: "csv", type: "text/csv" },
  fish: { name: "fish", ending: "csv", type: "text/csv" },
} as const;

/** Never fails: what can't be read is left out, and said. */
export async function logFile(form: LogForm, options: LogFileOptions): Promise<LogFile> {
  const log = await exportLog(options);
  const { name, ending, type } = FILES[form];
  const file = new File(
    [textOf(form, log)],
    `pegscribe-${name}-${dayName(options.now)}.${ending}`,
    { type },
  );
  const { events, incomplete } = log;
  const sessions = sessionsOf(events).size;
  return { file, sessions, events: events.length, ...(incomplete && { incomplete }) };
}

function textOf(form: LogForm, log: LogDocument): string {
  if (form === "json") return JSON.stringify(log);
  if (form === "events") return eventsCsv(log.events);
  return fishCsv([...sessionsOf(log.events)].map(([id, events]) => foldSession(id, events)));
}

function sessionsOf(events: readonly LogEvent[]): Map<string, LogEvent[]> {
  const sessions = new Map<string, LogEvent[]>();
  for (const event of events) {
    const same = sessions.get(event.session);
    if (same) same.push(event);
    else sessions.set(event.session, [event]);
  }
  return sessions;
}
