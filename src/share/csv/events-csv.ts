/** One row an event: the whole log as a table, out and in. */
import Papa from "papaparse";
import * as v from "valibot";
import { eventSchema, type LogEvent } from "../../log/event.ts";
import { Refusal } from "../../log/refusal.ts";
import { transferWords } from "../../words/transfer.ts";
import { BYTE_ORDER_MARK, plainCell, toCsv } from "./cells.ts";
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
  const { data, errors } = Papa.parse<string[]>(text.replace(BYTE_ORDER_MARK, ""), {
    skipEmptyLines: "greedy",
    delimitersToGuess: [",", ";", "\t"],
  });
  const [headers = [], ...rows] = data;
  if (headers[0] === FISH_MARK) throw new Refusal(transferWords.fishTable);
  const missing = [EVENTS_MARK, ...NEEDED].filter((header) => !headers.includes(header));
  if (missing.length > 0) throw new Refusal(transferWords.otherColumns(missing));
  const torn = errors.find(({ type }) => type === "Quotes")?.row;
  if (torn !== undefined) throw new Refusal(transferWords.tornRow(torn + 1));
  return rows.map((row, place) => eventIn(headers, row, place + 2));
}

/** @param line for the angler, the headers being the first */
function eventIn(headers: readonly string[], row: readonly string[], line: number): LogEvent {
  if (row.length !== headers.length) throw new Refusal(transferWords.tornRow(line));
  const cells = Object.fromEntries(
    headers.map((header, place) => [header, plainCell(row[place] ?? "")]),
  );
  if (Number(cells[EVENTS_MARK]) > EVENTS_VERSION) throw new Refusal(transferWords.newer);
  const read = v.safeParse(eventSchema, eventOf(cells), { abortEarly: true });
  if (read.success) return read.output;
  throw new Refusal(transferWords.badRow(line, v.getDotPath(read.issues[0]) ?? ""));
}
