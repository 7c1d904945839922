import { expect, test } from "vitest";
import { DEFAULT_SETTINGS, readSettings } from "../../src/scribe/settings.ts";

test("settings come back as they were kept", () => {
  const settings = { weight: "kg", length: "in", talkback: "full", callWord: "scribe" } as const;
  expect(readSettings(JSON.stringify(settings))).toEqual(settings);
});

test.each([undefined, "", "{", "[]", '{"weight":"stones","length":"cm","talkback":"short"}'])(
  "the usual ones stand in for %j",
  (kept) => expect(readSettings(kept)).toEqual(DEFAULT_SETTINGS),
);
