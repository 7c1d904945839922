/** Cells and rows of a table as RFC 4180 has them, safe to be opened by a spreadsheet. */

export type Cell = string | number | undefined;

/** Spreadsheets take what starts like this for a formula (the same when apostrophes stand before). */
const LIKE_A_FORMULA = /^'*[=+\-@\t\r]/;

/** A cell that no spreadsheet works out: an apostrophe stands before what looks like a formula. */
export function safeCell(cell: Cell): string {
  const text = String(cell ?? "");
  return LIKE_A_FORMULA.test(text) ? `'${text}` : text;
}

/** The text again that `safeCell` was given. */
export const plainCell = (cell: string): string =>
  cell.startsWith("'") && LIKE_A_FORMULA.test(cell) ? cell.slice(1) : cell;

const quoted = (text: string): string =>
  /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;

/** So that spreadsheets take the text for what it is, UTF-8. */
export const BYTE_ORDER_MARK = "\uFEFF";

/** A table with its headers, lines ended by CR LF. */
export function toCsv(headers: readonly string[], rows: Iterable<readonly Cell[]>): string {
  const lines = [headers, ...rows].map((row) =>
    row.map((cell) => quoted(safeCell(cell))).join(","),
  );
  return `${BYTE_ORDER_MARK}${lines.join("\r\n")}\r\n`;
}

/** The last moment that has a date (ECMAScript 2024, time values). Milliseconds. */
const LAST_MOMENT = 8.64e15;

/** "2026-06-06T09:00:00.000Z"; empty where there is no such date. */
export const utcText = (at: number): string =>
  Math.abs(at) <= LAST_MOMENT ? new Date(at).toISOString() : "";
