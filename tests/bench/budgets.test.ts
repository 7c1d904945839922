import { expect, test } from "vitest";
import budgets from "./budgets.json" with { type: "json" };
import { breaches } from "./budgets.ts";
import { figures } from "./reading/reading.ts";
import { looks } from "./sums/sums.ts";

test("each kind of budget is broken by a figure made worse, and by no figure", () => {
  const held = { right: { least: 97.5 }, bytes: { most: 36_000 } };
  expect(breaches(held, { right: 97.5, bytes: 36_000, beside: 1 })).toEqual([]);
  expect(breaches(held, { right: 97.4, bytes: 36_000 })).toEqual(["right: 97.4 is less than 97.5"]);
  expect(breaches(held, { right: 98, bytes: 36_001 })).toEqual(["bytes: 36001 is more than 36000"]);
  expect(breaches(held, { right: 98 })).toEqual(["bytes: was not measured"]);
  expect(breaches(held, { right: Number.NaN, bytes: 0 })).toEqual(["right: was not measured"]);
});

test("each budget that is held here is broken by its own figure made a tenth worse", () => {
  for (const [name, budget] of Object.entries({ ...budgets.reading, ...budgets.sums })) {
    const limit = "least" in budget ? budget.least : budget.most;
    const worse = "least" in budget ? 0.9 * limit - 1e-9 : 1.1 * limit + 1e-9;
    expect(breaches({ [name]: budget }, { [name]: worse })).toHaveLength(1);
  }
});

test("reading is as right as it was, and no dearer beside another reader", async () => {
  expect(breaches(budgets.reading, await figures())).toEqual([]);
  // Long on a busy machine; what it holds is no time.
}, 300_000);

test("sums look at entries no oftener than they did", () => {
  expect(breaches(budgets.sums, looks())).toEqual([]);
});
