import { expect, test } from "vitest";
import { DEFAULT_SETTINGS, readSettings, settingsOfAnother } from "../../src/scribe/settings.ts";

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

test("another phone's settings are taken, but not where sound goes and whether it is kept", () => {
  const own = { ...DEFAULT_SETTINGS, ears: "offline", memos: false } as const;
  const other = { ...DEFAULT_SETTINGS, weight: "kg", ears: "web", memos: true };
  expect(settingsOfAnother(other, own)).toEqual({ ...own, weight: "kg" });
});

test.each([
  undefined,
  7,
  "kg",
  { weight: "stones" },
  JSON.parse("[".repeat(1e5) + "]".repeat(1e5)),
])("another phone's settings that make no sense change nothing", (kept) =>
  expect(settingsOfAnother(kept, DEFAULT_SETTINGS)).toEqual(DEFAULT_SETTINGS),
);
