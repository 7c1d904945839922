import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { createReader } from "../../grammar/read.ts";
import type { Statement } from "../../grammar/statement.ts";
import { isAlike } from "./alike.ts";

/**
 * Lines written by several hands apart from the reader, each as one kind of angler would speak; some
 * are artful, and a few a judge might read otherwise. So a share is asked for, and it is the
 * share that a change to the language must not lower.
 */
const read = (name: string) =>
  readFileSync(new URL(`./tables/${name}`, import.meta.url), "utf8")
    .trim()
    .split("\n");

const reader = createReader();

/** "six mil", "6 mil" and "6mm" are one size; case and full stops are the printer's. */
const DIGITS: Readonly<Record<string, string>> = { four: "4", six: "6", eight: "8", ten: "10" };
const plain = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[^\p{L}\p{N} ]/gu, "")
    .replace(/(\d)\s*(mm|mil|ml)/g, "$1 mil")
    .split(" ")
    .map((word) => DIGITS[word] ?? word)
    .join(" ")
    .trim();

const plainTexts = (value: unknown): unknown => {
  if (typeof value === "string") return value === "*" ? value : plain(value);
  if (Array.isArray(value)) return value.map(plainTexts);
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, part]) => [key, plainTexts(part)]));
};

describe("lines from the bank", () => {
  const lines = read("bankside.jsonl").map(
    (line) => JSON.parse(line) as { said: string; means: Statement[] },
  );

  it("are read as meant in at least 97 of 100", () => {
    const misread = lines.filter(
      ({ said, means }) => !isAlike(plainTexts(means), plainTexts(reader.read([said]).statements)),
    );
    const share = 1 - misread.length / lines.length;
    expect(share, misread.map(({ said }) => said).join("\n")).toBeGreaterThan(0.97);
  });
});

describe("chatter from the bank", () => {
  const chatter = read("bankside-chatter.txt");
  const verdicts = chatter.map((line) => [line, reader.read([line]).verdict] as const);

  it("is never logged", () => {
    expect(verdicts.filter(([, verdict]) => verdict === "log")).toEqual([]);
  });

  it("is put up for a look in at most one line of a hundred", () => {
    const doubtful = verdicts.filter(([, verdict]) => verdict === "check");
    expect(doubtful.length, JSON.stringify(doubtful)).toBeLessThanOrEqual(chatter.length / 100);
  });
});
