import { describe, expect, test } from "vitest";
import type { StatementOf } from "../../grammar/statement.ts";
import { changeTackle, noTackle } from "../../src/log/set-up.ts";

type Change = Omit<StatementOf<"change">, "kind">;

const after = (...changes: Change[]) =>
  changes.reduce(
    (tackle, change) => changeTackle(tackle, { kind: "change", ...change }),
    noTackle(),
  ).setUp;

test("a step moves a known length and leaves an unknown one unknown", () => {
  expect(after({ depthMm: 500 }, { depthByMm: -100 })).toEqual({ depthMm: 400 });
  expect(after({ depthByMm: 100 })).toEqual({});
  expect(after({ distanceMm: 9000 }, { distanceByMm: 1000 })).toEqual({ distanceMm: 10_000 });
  expect(after({ lashMm: 200 }, { lashByMm: 50 })).toEqual({ lashMm: 250 });
});

test("a step past the surface leaves the depth unknown", () => {
  expect(after({ depthMm: 500 }, { depthByMm: -500 })).toEqual({});
});

test("what was said outright wins over a step in the same breath", () => {
  expect(after({ depthMm: 500 }, { depthMm: 800, depthByMm: 100 })).toEqual({ depthMm: 800 });
});

test("the first rig named is the one that was out", () => {
  expect(after({ depthMm: 500, hook: 16 }, { rig: "1" })).toEqual({
    rig: "1",
    depthMm: 500,
    hook: 16,
  });
});

test("a rig comes back as it was last fished, the distance stays", () => {
  const setUp = after(
    { rig: "1", depthMm: 500, lashMm: 200, hook: 16, bait: "pellet", baitNote: "red" },
    { depthByMm: 100 },
    { rig: "2", depthMm: 900, lashMm: 300, hook: 18, bait: "maggot", distanceMm: 11_000 },
    { rig: "1" },
  );
  expect(setUp).toEqual({
    rig: "1",
    depthMm: 600,
    lashMm: 200,
    hook: 16,
    bait: "pellet",
    baitNote: "red",
    distanceMm: 11_000,
  });
});

test("a field said with the rig wins over what the rig had", () => {
  const setUp = after(
    { rig: "1", depthMm: 500, hook: 16 },
    { rig: "2" },
    { rig: "1", depthMm: 450 },
  );
  expect(setUp).toEqual({ rig: "1", depthMm: 450, hook: 16 });
});

test("a step said with the rig starts from the rig's own depth", () => {
  expect(after({ rig: "1", depthMm: 500 }, { rig: "2" }, { rig: "1", depthByMm: 100 })).toEqual({
    rig: "1",
    depthMm: 600,
  });
});

test("a rig not fished before has no depth, lash or hook yet, and keeps bait and distance", () => {
  const first = { depthMm: 500, lashMm: 200, hook: 16, bait: "corn", distanceMm: 9000 };
  expect(after({ rig: "1", ...first }, { rig: "2" })).toEqual({
    rig: "2",
    bait: "corn",
    distanceMm: 9000,
  });
});

test("a rig that came back without a bait of its own keeps the one on the hook", () => {
  expect(after({ rig: "1" }, { rig: "2", bait: "corn" }, { rig: "1" })).toEqual({
    rig: "1",
    bait: "corn",
  });
});

test("naming the rig that is out changes nothing", () => {
  expect(after({ rig: "1", depthMm: 500 }, { rig: "1" })).toEqual({ rig: "1", depthMm: 500 });
});

test("another bait takes the note of the first away", () => {
  expect(after({ bait: "pellet", baitNote: "red" }, { bait: "corn" })).toEqual({ bait: "corn" });
  expect(after({ bait: "pellet" }, { baitNote: "red" })).toEqual({
    bait: "pellet",
    baitNote: "red",
  });
});

describe("a rig whose depth was planned", () => {
  const planned = [{ name: "2", depthMm: 600, shots: [] }];
  const afterPlan = (...changes: Change[]) =>
    changes.reduce(
      (tackle, change) => changeTackle(tackle, { kind: "change", ...change }, planned),
      noTackle(),
    ).setUp;

  test("is that deep when it is first picked up, and steps from there", () => {
    expect(afterPlan({ rig: "1", depthMm: 900 }, { rig: "2" }).depthMm).toBe(600);
    expect(afterPlan({ rig: "2", depthByMm: -100 }).depthMm).toBe(500);
  });

  test("is as deep as was said since", () => {
    expect(afterPlan({ rig: "2" }, { depthMm: 700 }, { rig: "1" }, { rig: "2" }).depthMm).toBe(700);
    expect(afterPlan({ rig: "2", depthMm: 800 }).depthMm).toBe(800);
  });

  test("says nothing of another rig", () => {
    expect(afterPlan({ rig: "1" })).toEqual({ rig: "1" });
  });
});
