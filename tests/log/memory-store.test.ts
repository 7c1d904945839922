import { expect, test } from "vitest";
import { SteadyClock } from "../../src/log/clock.ts";
import { MemoryStore } from "../../src/log/memory-store.ts";
import { assertEqual, STORE_CONTRACT } from "./store-contract.ts";

test.each(STORE_CONTRACT)("a store in memory $name", async ({ run }) => {
  await run(new MemoryStore(new SteadyClock()));
});

test("the contract's own comparison can fail", () => {
  expect(() => assertEqual([1], [2], "numbers")).toThrow("numbers: expected [2], got [1]");
});
