/** What is told of one seat. */
import type { Trial } from "../../analysis/best.ts";
import { type RateNow, rateNow } from "../../analysis/rates/rate-now.ts";
import { MS_PER_MINUTE } from "../../analysis/units.ts";
import { massEstimate } from "../../analysis/weights/total.ts";
import { lasts } from "../../log/lasts.ts";
import type { Fished } from "./fished.ts";
import type { Weighing } from "./ranks.ts";
import type { Seat } from "./seat.ts";
import type { BoardRow, PooledFactor } from "./view.ts";

/**
 * A phone that said nothing for so long may be out of reach rather than without a bite, and hours
 * without its fish would drag down what it fished with. Our own choice.
 */
const GONE_MS = 30 * MS_PER_MINUTE;

/** A row, and what is summed up over all of them. */
export interface PeggedRow extends Weighing {
  row: BoardRow;
  isMatch: boolean;
  /** Undefined where nothing was logged. */
  trials: Record<PooledFactor, Trial[]> | undefined;
}

/** @param now by the board's clock, milliseconds since the epoch */
export function rowOf(name: string, seat: Seat, now: number): PeggedRow {
  const { current, heardAt } = seat;
  const isGone = now - heardAt >= GONE_MS && isOut(current);
  const seen = { seat: name, standing: seat.standing, heardAt, isGone, ranks: undefined };
  if (!current) return { row: { ...seen, ...NOTHING_LOGGED }, ...NO_CATCH };
  const { session, mass } = current;
  const phoneNow = (isGone ? heardAt : now) - seat.ahead;
  const bag = massEstimate(mass);
  const { state, count, setUp, lastFishAt } = session;
  return {
    row: {
      ...seen,
      ...{ state, count, bag, setUp },
      lastFishAt: lastFishAt === undefined ? undefined : lastFishAt + seat.ahead,
      rate: rounded(rateNow(session, phoneNow)),
    },
    ...{ bag, middleG: mass.middleG },
    isMatch: session.plan.method === "match",
    trials: current.trialsUpTo(phoneNow),
  };
}

const NOTHING = { tells: true, value: 0, lower: 0, upper: 0 } as const;

const NOTHING_LOGGED = {
  state: undefined,
  count: 0,
  bag: NOTHING,
  setUp: {},
  lastFishAt: undefined,
  rate: { now: undefined, session: undefined },
} as const;

const NO_CATCH = { bag: NOTHING, middleG: 0, isMatch: false, trials: undefined } as const;

/** Whether more is to be expected of it. */
const isOut = (current: Fished | undefined): boolean =>
  current !== undefined && lasts(current.session);

/** As finely as it is read, so that a row which looks the same is the same. */
const rounded = ({ now, session }: RateNow): RateNow => ({
  now: roundedRate(now),
  session: roundedRate(session),
});

function roundedRate(rate: number | undefined): number | undefined {
  if (rate === undefined) return undefined;
  return rate < 10 ? Math.round(rate * 10) / 10 : Math.round(rate);
}
