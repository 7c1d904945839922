/** What is said of files that are taken in, or are not. Each refusal says what to do. */
export const transferWords = {
  notOurs:
    "This is not a file that Pegscribe wrote. Choose one whose name starts with “pegscribe”.",
  cutOff:
    "This Pegscribe file is cut off or damaged, so nothing was taken from it. Get it again from where it came.",
  newer: "This file comes from a newer Pegscribe. Update this one, then take it in again.",
  damagedAt: (where: string) =>
    `This Pegscribe file is damaged at ${where}, so nothing was taken from it. Get it again from where it came.`,
  tooBig: (megabytes: number, most: number) =>
    `This file has ${megabytes} MB, more than any log (${most} MB at the most), so it was not opened. Choose a file that Pegscribe wrote.`,
  unreadable:
    "The phone could not read this file. Copy it onto the phone itself, then choose it again.",
  notText:
    "This file is not text in UTF-8, so nothing was taken from it. If a spreadsheet saved it, save it once more as “CSV UTF-8”.",
  fishTable:
    "This is the table of fish, which is worked out from the events. Take in the table of events, or the log as JSON.",
  otherColumns: (missing: readonly string[]) =>
    `This table has other columns than a Pegscribe log: ${missing.slice(0, 3).join(", ")} ${missing.length === 1 ? "is" : "are"} missing. Take in the table of events as Pegscribe wrote it.`,
  columnTwice: (header: string) =>
    `This table has the column ${header} twice, so nothing was taken from it. Take one of them out, or get the file again.`,
  tornRow: (line: number) =>
    `Row ${line} of this table is cut off or has too many cells, so nothing was taken from it. Get the file again from where it came.`,
  badRow: (line: number, where: string) =>
    `Row ${line} of this table makes no sense at ${where || "its start"}, so nothing was taken from it. Put that cell right, or get the file again.`,
  overfull: (record: number) =>
    `Record ${record} of this file holds more than Pegscribe ever writes in one, so nothing was taken from it. Get the file again from where it came.`,
  impossible: (record: number) =>
    `Record ${record} of this file holds a time, weight or length that can’t be, so nothing was taken from it. Get the file again from where it came.`,
};
