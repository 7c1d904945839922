/** Cells and rows of a table as RFC 4180 has them, safe to be opened by a spreadsheet. */

export type Cell = string | number | undefined;

/**
 * What spreadsheets take for a formula's start: a sign, also in its wide form (OWASP, "CSV
 * Injection") or its small one, behind any blanks and letters that don't show (our own caution);
 * the same when apostrophes stand before.
 */
const FORMULA = "'*(?:(?![\\t\\r\\n])[\\p{Z}\\p{C}])*[=+\\-@＝＋－＠﹦﹢﹣﹫]";
/** A cell that starts like this is not trusted whatever follows. */
const BLANK = "'*[\\t\\r\\n]";
/**
 * Where a cell may start. A spreadsheet that parts cells by semicolons or tabs, as in countries with
 * a decimal comma, knows no quotes in the middle of a line, and a line's end for a row's.
 */
const START = "(?<=^|[;\\t\\r\\n])";
const BEFORE_FORMULA = new RegExp(`${START}(?=${FORMULA})|^(?=${BLANK})`, "gu");
const APOSTROPHE = new RegExp(`${START}'(?=${FORMULA})|^'(?=${BLANK})`, "gu");

/** A cell that no spreadsheet works out: an apostrophe stands before what looks like a formula. */
export const safeCell = (cell: Cell): string => String(cell ?? "").replace(BEFORE_FORMULA, "'");

/** The text again that `safeCell` was given. */
export const plainCell = (cell: string): string => cell.replace(APOSTROPHE, "");

const quoted = (text: string): string =>
  /[",;\t\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;

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

const UTC_TEXT = /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(\.\d{1,3})?Z$/;

/** Milliseconds since the epoch; of a time in any other form, which could only be guessed at, not a number. */
export const utcMoment = (text: string): number =>
  UTC_TEXT.test(text) ? Date.parse(text) : Number.NaN;
