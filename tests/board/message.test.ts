import { expect, test } from "vitest";
import { type Message, MOST_BYTES, packed, unpacked } from "../../src/board/message.ts";
import type { EntryStatement } from "../../src/log/event.ts";

const STANDING = { name: "Ada", peg: "12", section: "A" };
const message = (more: object = {}): Message => ({
  ...{ is: "standing", sentAt: 5, session: "s", standing: STANDING },
  ...more,
});
const padded = (bytes: number) =>
  new TextEncoder().encode(new TextDecoder().decode(packed(message())).padEnd(bytes));

/** An event in place of the standing. */
const said = (statement: EntryStatement, at = 5) => ({
  ...{ is: "event", session: undefined, standing: undefined },
  event: {
    ...{ v: 1, id: "e", session: "s", device: "d", seq: 1, at, verdict: "log" },
    body: { kind: "entry", statement },
  },
});

test.each([
  ["a standing", message()],
  ["an event", message(said({ kind: "fish", weightG: 900 }))],
])("%s comes back as it went out", (_, whole) => {
  expect(unpacked(packed(whole))).toEqual(whole);
});

test("letters that would turn round the figures behind a name are left out of it", () => {
  const turned = { ...STANDING, name: "\u202EAda\u202C", section: "\u2067A" };
  expect(unpacked(packed(message({ standing: turned })))).toEqual(message());
  const rig = (name: string) => message(said({ kind: "change", rig: name }));
  expect(unpacked(packed(rig("worm\u202E")))).toEqual(rig("worm"));
});

test("one that is longer than a board takes is not looked at", () => {
  expect(unpacked(padded(MOST_BYTES))).toEqual(message());
  expect(unpacked(padded(MOST_BYTES + 1))).toBeUndefined();
});

test.each([
  ["a name as long as a sentence", { standing: { ...STANDING, name: "A".repeat(41) } }],
  ["a peg as long as a sentence", { standing: { ...STANDING, peg: "1".repeat(41) } }],
  ["a session as long as a sentence", { session: "s".repeat(65) }],
  ["a name of blanks", { standing: { name: " \u2028" } }],
  ["a name of letters that only turn others", { standing: { name: "\u202E" } }],
  ["a clock beyond all days", { sentAt: 9e15 }],
  ["a clock before all", { sentAt: -1 }],
  ["a weight beyond all", said({ kind: "fish", weightG: 1e300 })],
  ["a shift beyond all", said({ kind: "change", depthByMm: -1e300 })],
  ["a time before all", said({ kind: "drop" }, -1)],
])("one with %s is no message", (_, more) => {
  expect(unpacked(packed(message(more)))).toBeUndefined();
});
