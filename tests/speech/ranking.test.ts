import { describe, expect, it } from "vitest";
import { type EarsThere, rankEars } from "../../src/speech/ranking.ts";

const THERE: EarsThere = { choice: "either", web: "sends", offline: "kept", online: true };
const ranked = (part: Partial<EarsThere>) => rankEars({ ...THERE, ...part }).join(" then ");

describe("whichever ears are better", () => {
  it.each<[Partial<EarsThere>, string]>([
    [{}, "web then offline"],
    [{ online: false }, "offline then web"],
    [{ online: false, web: "on-device" }, "web then offline"],
    [{ offline: "absent" }, "web"],
    [{ offline: "absent", online: false }, "web"],
    [{ offline: "impossible" }, "web"],
    [{ web: "none" }, "offline"],
    [{ web: "none", offline: "absent" }, "offline"],
    [{ web: "none", offline: "impossible" }, ""],
  ])("%o: %s", (part, order) => expect(ranked(part)).toBe(order));
});

describe("the angler's own choice", () => {
  it.each<[Partial<EarsThere>, string]>([
    [{ choice: "web" }, "web"],
    [{ choice: "web", online: false }, "web"],
    [{ choice: "offline" }, "offline"],
    [{ choice: "offline", offline: "absent" }, "offline"],
  ])("%o: %s alone", (part, order) => expect(ranked(part)).toBe(order));

  it.each<[Partial<EarsThere>, string]>([
    [{ choice: "web", web: "none" }, "offline"],
    [{ choice: "offline", offline: "impossible" }, "web"],
  ])("%o: where it cannot be had, %s", (part, order) => expect(ranked(part)).toBe(order));
});
