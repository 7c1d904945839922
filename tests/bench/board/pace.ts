/** What a busy angler says, drawn from a seed. */
import type { EntryStatement } from "../../../src/log/event.ts";
import { randomNumbers } from "../../analysis/fixtures/session.ts";

export interface Said {
  /** Milliseconds after the start, as it was fished. */
  at: number;
  statement: EntryStatement;
}

/** Ten a minute: a drop, a bite, a fish or a loss and feed in less than half a minute. Our own choice. */
const GAP_MS = 6000;

const DEPTHS_MM = [400, 600, 900, 1400];
const BAITS = ["maggot", "pellet", "worm"] as const;

/** @param ms how long it lasts */
export function busyAngler(seed: number, ms: number): Said[] {
  const random = randomNumbers(seed);
  const pick = <T>(from: readonly T[]): T => from[Math.floor(random() * from.length)] as T;
  const next = (): EntryStatement => {
    const draw = random();
    if (draw < 0.3) return { kind: "drop" };
    if (draw < 0.5) return { kind: "sign", sort: "bite" };
    if (draw < 0.7) return { kind: "fish", species: "carp", weightG: 300 + 900 * random() };
    if (draw < 0.75) return { kind: "loss", cause: "pulled" };
    if (draw < 0.95) return { kind: "feed", bait: "pellet", how: "catapult" };
    return { kind: "change", depthMm: pick(DEPTHS_MM), bait: pick(BAITS), rig: pick(["1", "2"]) };
  };
  const said: Said[] = [{ at: 0, statement: { kind: "session", act: "start" } }];
  for (let at = GAP_MS * random(); at < ms; at += -GAP_MS * Math.log(1 - random()))
    said.push({ at, statement: next() });
  return said;
}
