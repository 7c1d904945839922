import { describe, expect, it } from "vitest";
import type { TroubleReason } from "../../src/speech/recogniser.ts";
import { troubleWords } from "../../src/speech/trouble-words.ts";

/** Typed as a record so that a new reason without a place here does not compile. */
const REASONS: Record<TroubleReason, true> = {
  "not-allowed": true,
  "service-off": true,
  "no-microphone": true,
  network: true,
  "no-speech": true,
  language: true,
  busy: true,
  aborted: true,
  stalled: true,
  unsupported: true,
  "not-kept": true,
};

describe.each(Object.keys(REASONS) as TroubleReason[])("the words for %s", (reason) => {
  const { what, remedy } = troubleWords(reason);

  it("are one sentence each", () => {
    for (const words of [what, remedy]) expect(words).toMatch(/^[A-Z][^.!?]*\.$/);
  });

  it("blame nobody", () => {
    expect(`${what} ${remedy}`).not.toMatch(
      /\b(you|your|must|should|wrong|failed|invalid|fault)\b/i,
    );
  });
});

it("say of each trouble something of its own", () => {
  const whats = (Object.keys(REASONS) as TroubleReason[]).map(
    (reason) => troubleWords(reason).what,
  );
  expect(new Set(whats).size).toBe(whats.length);
});
