import { expect, test } from "vitest";
import type { BoardRow } from "../../src/screens/app/board.ts";
import { pooledText } from "../../src/screens/board/pooled.tsx";
import {
  caughtText,
  likelyText,
  minutesSince,
  rankText,
  rateText,
  stateText,
  weightText,
  whoText,
} from "../../src/screens/board/row-words.ts";
import { DEFAULT_SETTINGS } from "../../src/scribe/settings.ts";

const KILOS = { ...DEFAULT_SETTINGS, weight: "kg", length: "cm" } as const;

const row = (more: Partial<BoardRow> = {}): BoardRow => ({
  ...{ seat: "peg-1", standing: { name: "Ada", section: "A" }, state: "fishing", count: 2 },
  bag: { tells: true, value: 3000, lower: 2000, upper: 4500 },
  ...{ setUp: {}, lastFishAt: 0, heardAt: 0, isGone: false, ranks: undefined },
  rate: { now: 4, session: 12 },
  ...more,
});
const rank = (place: number, settled: boolean) => ({ place, of: 9, settled });

test.each([
  [{ standing: undefined }, "peg-1"],
  [{ standing: { name: "Ada" } }, "Ada"],
  [{ standing: { name: "Ada", peg: "12" } }, "Peg 12, Ada"],
])("who sits there: %j", (more, text) => expect(whoText(row(more))).toBe(text));

test.each([
  ["spoken", row(), "3.00 kg", "likely 2 kg to 5 kg"],
  [
    "some without a weight",
    row({ bag: { tells: false, lower: 2000, upper: Number.POSITIVE_INFINITY } }),
    "2.00 kg",
    "2 kg or more: not every fish has a weight",
  ],
  [
    "weighed",
    row({ bag: { tells: true, value: 3000, lower: 3000, upper: 3000 } }),
    "3.00 kg",
    "by the scales",
  ],
  ["nothing", row({ count: 0, bag: { tells: true, value: 0, lower: 0, upper: 0 } }), "0 kg", ""],
])("a weight that is %s", (_, one, weight, likely) => {
  expect([weightText(one, KILOS), likelyText(one, KILOS)]).toEqual([weight, likely]);
});

test.each([
  [row(), 4, "2 fish, the last 4 min ago"],
  [row(), undefined, "No fish yet"],
  [row({ state: undefined }), undefined, "Nothing logged yet"],
] as const)("what was caught", (one, minutes, text) => expect(caughtText(one, minutes)).toBe(text));

test.each([
  [{}, "4.0 an hour now, 12 over the session"],
  [{ state: "ended" as const }, "12 an hour over the session"],
  [{ rate: { now: undefined, session: 12 } }, "12 an hour over the session"],
  [{ rate: { now: undefined, session: undefined } }, "Too short to give a rate"],
  [{ state: "ready" as const }, ""],
  [{ state: undefined }, ""],
])("how fast: %j", (more, text) => expect(rateText(row(more))).toBe(text));

test.each([
  [{}, 9, ""],
  [{}, 10, "No word for 10 min"],
  [{ isGone: true }, 45, "No word for 45 min: its sums end there"],
  [{ state: "paused" as const }, 12, "On a break · No word for 12 min"],
  [{ state: "ended" as const }, 600, "Finished"],
  [{ state: "ready" as const }, 600, "Not started"],
  [{ state: undefined }, 600, ""],
])("what keeps it from fishing: %j after %i min", (more, quiet, text) =>
  expect(stateText(row(more), quiet)).toBe(text),
);

test.each([
  [rank(1, true), rank(2.5, true), "Section A: place 1 of 9, overall 2.5 of 9"],
  [rank(1, true), rank(2, false), "Section A: place 1 of 9, overall 2 of 9 (overall not settled)"],
  [
    rank(1, false),
    rank(2, true),
    "Section A: place 1 of 9, overall 2 of 9 (in the section not settled)",
  ],
  [rank(1, false), rank(2, false), "Section A: place 1 of 9, overall 2 of 9 (not settled)"],
  [undefined, rank(2, true), "Overall: place 2 of 9"],
  [undefined, rank(2, false), "Overall: place 2 of 9 (not settled)"],
])("a place in a match", (section, overall, text) =>
  expect(rankText(row({ ranks: { section, overall } }))).toBe(text),
);

test("time goes in whole minutes, and never back", () => {
  expect([minutesSince(119_999, 0), minutesSince(0, 60_000)]).toEqual([1, 0]);
});

const contender = (level: number, value: number) => ({
  ...{ level, fish: 20, hours: 2.5, chanceBest: 0.9, sessions: 4 },
  fishPerHour: { tells: true as const, value, lower: value - 2, upper: value + 2 },
});
const few = {
  ...contender(600, 3),
  fish: 3,
  fishPerHour: { tells: false as const, lower: 0, upper: 4 },
};

test.each([
  [
    { verdict: "clear" as const, ranked: [contender(600, 8), contender(900, 4)] },
    "Depth: 60 cm is best with 8.0 fish an hour (6.0 to 10), over 2 h 30 min on 4 pegs. 90 in 100 that it is.",
  ],
  [
    { verdict: "close" as const, ranked: [contender(600, 8), few] },
    "Depth: no clear best. 60 cm with 8.0 fish an hour (6.0 to 10), over 2 h 30 min on 4 pegs; 60 cm with too few to tell, up to 4.0 fish an hour, over 2 h 30 min on 4 pegs.",
  ],
  [
    { verdict: "alone" as const, ranked: [{ ...contender(600, 8), sessions: 1 }] },
    "Depth: only 60 cm so far, with 8.0 fish an hour (6.0 to 10), over 2 h 30 min on 1 peg.",
  ],
  [{ verdict: "too-few" as const, ranked: [few, few] }, "Depth: too few fish to tell, after 5 h."],
  [{ verdict: "too-few" as const, ranked: [] }, "Depth: none was named."],
])("what is best over all pegs", (pooled, text) =>
  expect(pooledText("depth", pooled, KILOS)).toBe(text),
);
