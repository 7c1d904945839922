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

/**
 * Columns without which a row is no event, or another one: what a correction takes away stands in the
 * last. Others may be missing where nothing stood in them.
 */
const NEEDED = [
  ...["event_id", "session_id", "device_id", "sequence", "time_utc", "verdict", "event"],
  "rest_json",
];

/**
 * The events of a table, all or none; `;` or a tab between cells does as well as a comma.
 * @throws Refusal
 */
export function readEventsCsv(text: string): LogEvent[] {
  const table = text.replace(BYTE_ORDER_MARK, "");
  const [headers, delimiter] = headersIn(table);
  const events: LogEvent[] = [];
  let line = 0;
  let read = 0;
  // Row by row: the first that is no good ends it, before the rest has taken time and room.
  Papa.parse<string[]>(table, {
    delimiter,
    skipEmptyLines: "greedy",
    chunkSize: LONGEST_ROW,
    step({ data, errors }) {
      line += 1;
      if (errors.length > 0) throw new Refusal(transferWords.tornRow(line));
      if (line > 1) events.push(eventIn(headers, data, line));
    },
    chunk({ meta: { cursor } }: Papa.ParseResult<string[]>) {
      if (cursor === read) throw new Refusal(transferWords.tornRow(line + 1));
      read = cursor;
    },
  });
  return events;
}

/** In letters. What is wrong with a row is gathered until it ends: one without an end would fill the memory. */
const LONGEST_ROW = 4_000_000;

/** No headers of ours are as long, in letters. */
const LONGEST_HEADERS = 10_000;

/** The headers, in which no letter parts cells but what does so in all rows, and that. */
function headersIn(table: string): [headers: string[], delimiter: string] {
  const firstLine = /^[^\r\n]*/.exec(table)?.[0].slice(0, LONGEST_HEADERS) ?? "";
  const delimiter = /[,;\t]/.exec(firstLine)?.[0] ?? ",";
  const headers = Papa.parse<string[]>(firstLine, { delimiter }).data[0] ?? [];
  if (headers[0] === FISH_MARK) throw new Refusal(transferWords.fishTable);
  const missing = [EVENTS_MARK, ...NEEDED].filter((header) => !headers.includes(header));
  if (missing.length > 0) throw new Refusal(transferWords.otherColumns(missing));
  const twice = EVENT_HEADERS.find(
    (header) => headers.indexOf(header) < headers.lastIndexOf(header),
  );
  if (twice !== undefined) throw new Refusal(transferWords.columnTwice(twice));
  return [headers, delimiter];
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
