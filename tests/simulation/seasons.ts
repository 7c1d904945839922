/** Levels over several sessions: whether the shrunken rates hold the truth, and the leader leads. */
import { bestOver } from "../../src/analysis/seasons/over-sessions.ts";
import { at } from "../analysis/fixtures/session.ts";
import { drawDay, sessionAt } from "./day.ts";
import type { DayKind } from "./days.ts";
import { drawAngler } from "./fishing.ts";
import { randomOf } from "./random.ts";
import { type Call, type Try, tryOfEstimate } from "./tally.ts";
import { fishPerHour } from "./truth.ts";
import { DAY_MIN, drawWater } from "./water.ts";

const SESSIONS = 4;

/** Seasons of a few days on one water whose places stay as good as they are. */
export function trySeasons(kind: DayKind, count: number, seed: number) {
  const rates: Try[] = [];
  const best: Call[] = [];
  for (let season = 0; season < count; season += 1) {
    const random = randomOf(seed + season);
    const angler = drawAngler(kind.anglerSpread, random);
    const water = drawWater(kind, random);
    const days = Array.from({ length: SESSIONS }, () => drawDay(kind, water, angler, random));
    const sessions = days.map((day) => sessionAt(day, DAY_MIN));
    const [truest] = water.places.toSorted((one, other) => other.bitesPerHour - one.bitesPerHour);
    for (const told of bestOver("depth", sessions, at(DAY_MIN)).ranked) {
      const place = water.places.find(({ depthMm }) => depthMm === told.level);
      const [day] = days;
      if (!place || !day) continue;
      rates.push(tryOfEstimate(told.fishPerHour, fishPerHour(day, place)));
      best.push({ chance: told.chanceBest, came: place === truest });
    }
  }
  return { rates, best };
}
