import type { Trial } from "../trial.ts";
import { tryTabs } from "./tabs.ts";

const CASES = 1000;

export const run: Trial = async ({ seed }) => {
  const { events, faults } = await tryTabs(CASES, seed);
  return [
    {
      promise: "Merging is safe",
      tried: "two tabs writing into one log at once",
      cases: CASES,
      faults,
      figures: `${events} events`,
    },
  ];
};
