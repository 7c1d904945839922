/** One row an event: the whole log as a table, out and in. */
import Papa from "papaparse";
import * as v from "valibot";
import { eventSchema, type LogEvent } from "../../log/event.ts";
import { Refusal } from "../../log/refusal.ts";
import { transferWords } from "../../words/transfer.ts";
import { plainCell, toCsv } from "./cells.ts";
import { EVENT_HEADERS, EVENTS_MARK, EVENTS_VERSION, eventOf, eventRow } from "./event-columns.ts";
import { FISH_MARK } from "./fish-csv.ts";

export const eventsCsv = (events: readonly LogEvent[]): string =>
  toCsv(EVENT_HEADERS, events.map(eventRow));

/** Columns without which a row is no event; others may be missing where nothing stood in them. */
const NEEDED = ["event_id", "session_id", "device_id", "sequence", "time_utc", "verdict", "event"];

/**
 * The events of a table, all or none; `;` or a tab between cells does as well as a comma.
 * @throws Refusal
 */
export function readEventsCsv(text: string): LogEvent[] {
  const { data, meta, errors } = Papa.parse<Record<string, string>>(text, {
    header: true,
    skipEmptyLines: "greedy",
    delimitersToGuess: [",", ";", "\t"],
    transform: plainCell,
  });
  const headers = meta.fields ?? [];
  if (headers[0] === FISH_MARK) throw new Refusal(transferWords.fishTable);
  const missing = [EVENTS_MARK, ...NEEDED].filter((header) => !headers.includes(header));
  if (missing.length > 0) throw new Refusal(transferWords.otherColumns(missing));
  const torn = errors.find(({ type }) => type === "Quotes" || type === "FieldMismatch");
  // Counted from 0, with the headers where quotes are open, without them where cells are missing.
  if (torn) {
    throw new Refusal(transferWords.tornRow((torn.row ?? 0) + (torn.type === "Quotes" ? 1 : 2)));
  }
  return data.map((row, place) => {
    if (Number(row[EVENTS_MARK]) > EVENTS_VERSION) throw new Refusal(transferWords.newer);
    const read = v.safeParse(eventSchema, eventOf(row), { abortEarly: true });
    if (read.success) return read.output;
    throw new Refusal(transferWords.badRow(place + 2, v.getDotPath(read.issues[0]) ?? ""));
  });
}
