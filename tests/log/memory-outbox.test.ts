import { test } from "vitest";
import { SteadyClock } from "../../src/log/clock.ts";
import { MemoryStore } from "../../src/log/memory-store.ts";
import { OUTBOX_CONTRACT } from "./outbox-contract.ts";

test.each(OUTBOX_CONTRACT)("an outbox in memory $name", async ({ run }) => {
  const store = new MemoryStore(new SteadyClock());
  await run(store, store.outbox);
});
