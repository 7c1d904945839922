import { SteadyClock } from "../../src/log/clock.ts";
import { Keeper } from "../../src/log/keeper.ts";
import type { MemoryStore } from "../../src/log/memory-store.ts";
import { comparePlaces } from "../../src/log/order.ts";

/** A keeper over a store of some kind, both by one clock. */
export function keeperOver<Store extends MemoryStore>(Kind: new (clock: SteadyClock) => Store) {
  const clock = new SteadyClock();
  const store = new Kind(clock);
  return { store, keeper: new Keeper(store, clock) };
}

/** What is stored, in the log's order. */
export const storedIds = async (store: MemoryStore): Promise<string[]> =>
  (await store.everything()).sort(comparePlaces).map(({ id }) => id);
