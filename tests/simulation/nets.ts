/** Nets against a limit: the chance told that one is over it, and whether it was. */
import { type Bias, UNKNOWN_BIAS } from "../../src/analysis/weights/bias.ts";
import { netRisks } from "../../src/analysis/weights/nets.ts";
import { gramsAt, sessionAt } from "./day.ts";
import type { Simulated } from "./days.ts";
import type { Random } from "./random.ts";
import type { Call } from "./tally.ts";
import { DAY_MIN } from "./water.ts";

/** The risk at which the tool warns. */
const RISK = 0.3;

export interface NetCalls {
  /** That a net is over now, and that it is with the next fish. */
  over: Call[];
  next: Call[];
  /** That it is over when the chance is first above the risk. */
  first: Call[];
}

export const noCalls = (): NetCalls => ({ over: [], next: [], first: [] });

/** Limits lie about what is in the net by word; they know nothing of what it truly weighs. */
const LIMIT_SPREAD = 0.25;

/** Adds the net in use at some time of the day, against a limit near it. */
export function addNets(
  calls: NetCalls,
  { day, learnt }: Simulated,
  known: boolean,
  random: Random,
) {
  const bias = known ? learnt : UNKNOWN_BIAS;
  const minute = random.between(60, DAY_MIN);
  const { net, nets } = sessionAt(day, minute);
  const spokenG = nets.find(({ number }) => number === net)?.spokenG ?? 0;
  const netLimitG = spokenG * Math.exp(random.normal(LIMIT_SPREAD));
  if (netLimitG === 0) return;
  const risk = netRisks(sessionAt(day, minute, { netLimitG }), bias, RISK).find(
    (one) => one.net === net,
  );
  if (!risk) return;
  calls.over.push({ chance: risk.chanceOver, came: gramsAt(day, minute, net) > netLimitG });
  const next = day.landed.find((fish) => fish.minute > minute);
  if (next?.net === net) {
    const came = gramsAt(day, next.minute, net) > netLimitG;
    calls.next.push({ chance: risk.chanceAfterNext, came });
  }
  const first = firstWarning(day, bias, netLimitG);
  if (first) calls.first.push(first);
}

/** The first net of the day at the first fish that brings it above the risk. */
function firstWarning(day: Simulated["day"], bias: Bias, netLimitG: number): Call | undefined {
  for (const { minute, net } of day.landed) {
    if (net !== 1) return undefined;
    const [risk] = netRisks(sessionAt(day, minute, { netLimitG }), bias, RISK);
    if (risk && risk.chanceOver > RISK)
      return { chance: risk.chanceOver, came: gramsAt(day, minute, 1) > netLimitG };
  }
  return undefined;
}
