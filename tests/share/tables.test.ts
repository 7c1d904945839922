import fc from "fast-check";
import Papa from "papaparse";
import { describe, expect, test } from "vitest";
import { foldSession } from "../../src/log/fold.ts";
import { plainCell, safeCell, utcText } from "../../src/share/csv/cells.ts";
import { eventsCsv, readEventsCsv } from "../../src/share/csv/events-csv.ts";
import { fishCsv } from "../../src/share/csv/fish-csv.ts";
import { amend, entry, MINUTE_MS, SESSION, START } from "../log/session-script.ts";
import { day, INJECTIONS, statement, text } from "./days.ts";

/** A table as any program reads it. */
function parsed(csv: string): Record<string, string>[] {
  const { data, errors } = Papa.parse<Record<string, string>>(csv, {
    header: true,
    skipEmptyLines: true,
  });
  expect(errors).toEqual([]);
  return data;
}

/** What starts a formula, or might, wherever some spreadsheet begins a cell. */
const FORMULA = /(?:^|[;\t\r\n])(?:(?![\t\r\n])[\p{Z}\p{C}])*[=+\-@＝＋－＠﹦﹢﹣﹫]/u;
const pieces = fc
  .array(fc.constantFrom(..."=+-@＝＋－＠﹣ \t\r\n;,'\"\u0000\u200b\u202e\u00a0\ufeffa1\ud800"), {
    maxLength: 8,
  })
  .map((letters) => letters.join(""));

describe("a cell", () => {
  test("never starts a formula, and comes back as it was", () => {
    fc.assert(
      fc.property(fc.oneof(text, pieces), (cell) => {
        expect(safeCell(cell)).not.toMatch(/^[\t\r\n]/);
        expect(safeCell(cell)).not.toMatch(FORMULA);
        expect(plainCell(safeCell(cell))).toBe(cell);
      }),
      { numRuns: 2000, examples: INJECTIONS.map((one): [string] => [one]) },
    );
  });

  test.each([
    "=1",
    "+1",
    "-1",
    "@x",
    "＝1",
    "＠x",
    "﹣1",
    " =1",
    "\n=1",
    "\u0000=1",
    "a;=1",
    "a;\t+1",
  ])("%j gets its apostrophe", (cell) => expect(safeCell(cell)).toMatch(/'[^']*[1x]$/));
});

test("a time beyond all days is left empty", () => {
  expect([utcText(9e15), utcText(-9e15), utcText(0)]).toEqual(["", "", "1970-01-01T00:00:00.000Z"]);
});

describe("the table of events", () => {
  test("comes back event for event, whatever was said", () => {
    fc.assert(
      fc.property(day, (events) => {
        expect(readEventsCsv(eventsCsv(events))).toEqual(events);
      }),
      { numRuns: 300 },
    );
  });

  test("holds no cell that a spreadsheet would work out", () => {
    fc.assert(
      fc.property(day, (events) => {
        const cells = Papa.parse<string[]>(eventsCsv(events)).data.flat();
        expect(cells.filter((cell) => FORMULA.test(cell))).toEqual([]);
      }),
      { numRuns: 100 },
    );
  });

  test("has a column for every field that can be said, the spoken unit aside", () => {
    fc.assert(
      fc.property(statement, (said) => {
        fc.pre(said.kind !== "remind");
        const rest = parsed(eventsCsv([entry(1, said)]))[0]?.rest_json || '{"fields":{}}';
        const { unit: _, ...fields } = JSON.parse(rest).fields;
        expect(fields).toEqual({});
      }),
    );
  });

  test("has its units in its headers, and lines ended by CR LF", () => {
    const csv = eventsCsv([entry(1, { kind: "change", depthByMm: -100, depthMm: 600 })]);
    const [row] = parsed(csv);
    expect(row).toMatchObject({
      pegscribe_events: "1",
      event_id: "e1",
      time_utc: "2026-06-06T09:01:00.000Z",
      statement: "change",
      depth_mm: "600",
      deeper_by_mm: "",
      shallower_by_mm: "100",
    });
    expect(csv.replaceAll("\r\n", "")).not.toMatch(/[\r\n]/);
  });

  test("is read with semicolons too, as some spreadsheets write it", () => {
    const events = [entry(1, { kind: "fish", species: "carp", weightG: 900.5 })];
    const rows = Papa.parse<string[]>(eventsCsv(events)).data;
    expect(readEventsCsv(Papa.unparse(rows, { delimiter: ";" }))).toEqual(events);
  });
});

describe("a table that is no good", () => {
  const whole = eventsCsv([
    entry(1, { kind: "fish", species: "carp", weightG: 900 }),
    entry(2, { kind: "note", text: "one, two" }),
    {
      ...amend(3, "e1", { weightG: 1000 }, ["species"]),
      heard: { text: "rudd", alternatives: ["roach"], by: "web" },
    },
  ]);
  const REST = /,"\{""clear[^}]*\}"/;

  test.each([
    ["with other columns", "name,age\r\nx,1\r\n", /other columns.*pegscribe_events.*missing/],
    ["with one column taken out", whole.replace("event_id", "id"), /event_id is missing/],
    [
      "without what corrections take away",
      whole.replace("rest_json", "rest"),
      /rest_json is missing/,
    ],
    ["with one column twice", whole.replace("length_mm", "weight_g"), /column weight_g twice/],
    ["of fish", fishCsv([]), /table of fish/],
    ["from a newer version", whole.replaceAll("\n1,", "\n2,"), /newer Pegscribe/],
    ["cut off in a row", whole.slice(0, -40), /^Row 4 of this table is cut off/],
    ["cut off in quotes", whole.replace('two",', "two,"), /^Row 3 of this table/],
    ["with a word for a weight", whole.replace(",900,", ",heavy,"), /^Row 2 .*weightG/],
    ["with a weight beyond all", whole.replace(",900,", ",1e999,"), /^Row 2 .*weightG/],
    ["with a time of no day", whole.replace("T09:01", "T39:01"), /^Row 2 .* at at,/],
    [
      "with a day in its own order",
      whole.replace(/2026[^,]*/, "06/07/2026 09:01"),
      /^Row 2 .* at at,/,
    ],
    ["with a time of nobody knows where", whole.replace("00.000Z", "00"), /^Row 2 .* at at,/],
    ["with a rest that is cut off", whole.replace('""]}"', '"'), /^Row 4 .* at body,/],
    ["with a number for the rest", whole.replace(REST, ",5"), /^Row 4 .* at body,/],
    ["with nothing for the rest", whole.replace(REST, ",null"), /^Row 4 .* at body,/],
    [
      "with words for its fields",
      whole.replace(REST, ',"{""fields"":""lb""}"'),
      /^Row 4 .* at body,/,
    ],
    ["with guesses cut off", whole.replace('""]"', '"'), /^Row 4 .* at heard\.alternatives,/],
  ])("%s says what is wrong", (_, csv, sentence) => {
    expect(() => readEventsCsv(csv)).toThrow(sentence);
  });
});

describe("the table of fish", () => {
  test("has one row, with its count, for more fish than anyone nets at once", () => {
    const rows = parsed(
      fishCsv([foldSession(SESSION, [entry(1, { kind: "fish", count: 10_000 })])]),
    );
    expect(rows.map(({ count }) => count)).toEqual(["10000"]);
  });

  test("has a row a fish, corrected, with what it was caught with", () => {
    const session = foldSession(SESSION, [
      entry(1, { kind: "session", act: "start" }),
      entry(2, { kind: "change", rig: "2", depthMm: 600, bait: "maggot", hook: 18 }),
      entry(3, { kind: "fish", species: "roach", count: 2 }),
      entry(4, { kind: "fish", species: "=carp", weightG: 900 }),
      amend(5, "e4", { weightG: 1000 }),
    ]);
    const rows = parsed(fishCsv([session]));
    expect(rows.map((row) => [row.fish_number, row.species, row.weight_g, row.depth_mm])).toEqual([
      ["1", "roach", "", "600"],
      ["2", "roach", "", "600"],
      ["3", "'=carp", "1000", "600"],
    ]);
    expect(rows[2]).toMatchObject({
      time_utc: new Date(START + 4 * MINUTE_MS).toISOString(),
      minutes_since_start: "3.00",
      rig: "2",
      hook_size: "18",
      bait: "maggot",
      net: "1",
    });
  });
});
