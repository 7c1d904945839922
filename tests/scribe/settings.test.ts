import { expect, test } from "vitest";
import { DEFAULT_SETTINGS, readSettings } from "../../src/scribe/settings.ts";

test("settings come back as they were kept", () => {
  const settings = {
    weight: "kg",
    length: "in",
    talkback: "full",
    callWord: "scribe",
    warnings: { nets: "off", rules: true, pace: false, float: false },
  } as const;
  expect(readSettings(JSON.stringify(settings))).toEqual({ ...DEFAULT_SETTINGS, ...settings });
});

test("settings kept before there were warnings to choose from have all of them", () => {
  const { warnings, ...older } = DEFAULT_SETTINGS;
  expect(readSettings(JSON.stringify({ ...older, length: "in" }))).toEqual({
    ...older,
    length: "in",
    warnings,
  });
});

test.each([undefined, "", "{", "[]", '{"weight":"stones","length":"cm","talkback":"short"}'])(
  "the usual ones stand in for %j",
  (kept) => expect(readSettings(kept)).toEqual(DEFAULT_SETTINGS),
);
