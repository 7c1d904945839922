import { expect, test } from "vitest";
import { type Message, MOST_BYTES, packed, unpacked } from "../../src/board/message.ts";

const STANDING = { name: "Ada", peg: "12", section: "A" };
const message = (more: object = {}): Message => ({
  ...{ is: "standing", sentAt: 5, session: "s", standing: STANDING },
  ...more,
});
const padded = (bytes: number) =>
  new TextEncoder().encode(new TextDecoder().decode(packed(message())).padEnd(bytes));

test("a message comes back as it went out", () => {
  expect(unpacked(packed(message()))).toEqual(message());
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
])("one with %s is no message", (_, more) => {
  expect(unpacked(packed(message(more)))).toBeUndefined();
});
