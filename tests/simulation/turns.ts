/** Days on which the pace turns once, or does not: what the sums over a change say of them. */
import { sessionChange } from "../../src/analysis/change/session-change.ts";
import { currentRate, WINDOW_MS } from "../../src/analysis/rate.ts";
import { at, MINUTE, START } from "../analysis/fixtures/session.ts";
import { type Day, drawDay, sessionAt } from "./day.ts";
import { AS_ASSUMED } from "./days.ts";
import { drawAngler } from "./fishing.ts";
import { type Random, randomOf } from "./random.ts";
import { type Call, type Try, tryOf } from "./tally.ts";
import { DAY_MIN, LANDED, plainWater, type Turn } from "./water.ts";

/** Spread of ln(rate after / rate before). */
const TURN_SPREAD = 0.8;
const FISH_PER_HOUR = 14;
const PACE_SPREAD = 0.5;

const drawTurn = (random: Random): Turn => ({
  minute: random.between(45, DAY_MIN - 45),
  times: Math.exp(random.normal(TURN_SPREAD)),
});

function drawTurnedDay(random: Random, turn?: Turn): Day {
  const pace = FISH_PER_HOUR * random.gamma(PACE_SPREAD);
  const water = plainWater(pace, 0, random, turn);
  const kind = { ...AS_ASSUMED, moves: false };
  return drawDay(kind, water, drawAngler(kind.anglerSpread, random), random);
}

export interface Turns {
  /** Rates before and after, held against the truth, and the time of the turn against its middle 95 %. */
  rates: Try[];
  times: Try[];
  /** With what chance there was a turn, on days of which half had one; and that it went down. */
  turned: Call[];
  slower: Call[];
  /** With what chance the last half hour was faster than before, at some time after the turn. */
  faster: Call[];
}

/** The middle 95 % of the time at which the change came, in minutes fished. */
function middleOf(posterior: readonly number[]) {
  let passed = 0;
  const sums = posterior.map((chance) => {
    passed += chance;
    return passed;
  });
  return {
    lower: sums.findIndex((sum) => sum >= 0.025),
    upper: sums.findIndex((sum) => sum >= 0.975) + 1,
  };
}

function addTurned(turns: Turns, day: Day, turn: Turn, random: Random): void {
  const change = sessionChange(sessionAt(day, DAY_MIN), at(DAY_MIN));
  if (change.tells) {
    const before = LANDED * day.water.places[0].bitesPerHour;
    const isSure = change.chance >= 0.9;
    turns.rates.push(tryOf(change.before, before, isSure));
    turns.rates.push(tryOf(change.after, before * turn.times, isSure));
    turns.times.push(tryOf(middleOf(change.posterior), turn.minute, isSure));
    turns.turned.push({ chance: change.chance, came: true });
    turns.slower.push({ chance: change.chanceSlower, came: turn.times < 1 });
  }
  const minute = random.between(turn.minute, DAY_MIN);
  if (minute <= WINDOW_MS / MINUTE) return;
  const { verdict, chanceFaster } = currentRate(sessionAt(day, minute), START + minute * MINUTE);
  if (verdict !== "too-few") turns.faster.push({ chance: chanceFaster, came: turn.times > 1 });
}

export function tryTurns(count: number, seed: number): Turns {
  const turns: Turns = { rates: [], times: [], turned: [], slower: [], faster: [] };
  for (let place = 0; place < count; place += 1) {
    const random = randomOf(seed + place);
    const turn = drawTurn(random);
    addTurned(turns, drawTurnedDay(random, turn), turn, random);
    const steady = drawTurnedDay(random);
    const change = sessionChange(sessionAt(steady, DAY_MIN), at(DAY_MIN));
    if (change.tells) turns.turned.push({ chance: change.chance, came: false });
  }
  return turns;
}
