/** A session as a climb: the weight over time, how sure it is, and what happened when. */
import { sessionChange } from "../../analysis/change/session-change.ts";
import type { Bias } from "../../analysis/weights/bias.ts";
import { fillWeights } from "../../analysis/weights/fill.ts";
import { type Load, loadsOf } from "../../analysis/weights/loads.ts";
import { massEstimate, massOf } from "../../analysis/weights/total.ts";
import type { Entry, Session } from "../../log/session.ts";
import type { EventRow, Reach, Reached } from "../../ui/charts/climb.tsx";
import { chartWords } from "../../words/charts.ts";

export interface SessionClimb {
  /** Milliseconds since the epoch. */
  from: number;
  to: number;
  /** Grams as spoken, up to and with each fish that was weighed. */
  climb: Reached[];
  /** Grams in truth, fish without a weight filled in. */
  band: Reach[];
  rows: EventRow[];
  breaks: { from: number; to: number }[];
  turn: Turn;
}

/** Whether the pace turned; rates are fish per hour. */
export type Turn =
  | { is: "turned"; at: number; chance: number; before: number; after: number }
  | { is: "none" }
  | { is: "too-few" };

/** The chance from which a turn is called one; as in the simulated tables. */
const SURE = 0.9;

const ROWS = ["fish", "loss", "sign", "feed", "change"] as const;

/** Undefined before a session has started. `now` in milliseconds since the epoch. */
export function climbOf(session: Session, now: number, bias: Bias): SessionClimb | undefined {
  const { startedAt, endedAt, entries, pauses } = session;
  if (startedAt === undefined) return undefined;
  const lastAt = entries.at(-1)?.at ?? startedAt;
  const to = Math.max(endedAt ?? now, lastAt);
  return {
    from: Math.min(startedAt, entries[0]?.at ?? startedAt),
    to,
    climb: spokenClimb(entries),
    band: bandOf(session, bias),
    rows: ROWS.map((kind) => ({
      name: chartWords.climb.rows[kind],
      at: timesOf(entries, kind),
    })).filter(({ at }) => at.length > 0),
    breaks: pauses.map((pause) => ({ from: pause.from, to: pause.to ?? to })),
    turn: turnOf(session, now),
  };
}

const timesOf = (entries: readonly Entry[], kind: Entry["statement"]["kind"]): number[] =>
  entries.filter(({ statement }) => statement.kind === kind).map(({ at }) => at);

function spokenClimb(entries: readonly Entry[]): Reached[] {
  let value = 0;
  return entries.flatMap(({ at, statement }) => {
    if (statement.kind !== "fish" || statement.weightG === undefined) return [];
    value += statement.weightG * (statement.count ?? 1);
    return [{ at, value }];
  });
}

/**
 * The limits of the bag after each fish. What the scales said of a net is shared out over its fish
 * by what was spoken of each, so that the band ends where the bag does.
 */
function bandOf(session: Session, bias: Bias): Reach[] {
  const whole = new Map(loadsOf(session).map((load) => [load.net, load]));
  const soFar = new Map<number, Load>();
  return fillWeights(session.entries).fish.map(({ entry, count, eachG, variance }) => {
    const { net } = entry;
    const before = soFar.get(net) ?? { net, spokenG: 0, variance: 0, fish: 0, unknown: 0 };
    const spokenG = before.spokenG + count * eachG;
    const load = {
      ...before,
      spokenG,
      variance: before.variance + count * variance,
      fish: before.fish + count,
    };
    soFar.set(net, { ...load, ...weighedShare(whole.get(net), spokenG) });
    const { lower, upper } = massEstimate(massOf([...soFar.values()], bias));
    return { at: entry.at, lower, upper };
  });
}

function weighedShare(whole: Load | undefined, spokenG: number): Pick<Load, "weighedG"> {
  if (whole?.weighedG === undefined || whole.spokenG === 0) return {};
  return { weighedG: (whole.weighedG * spokenG) / whole.spokenG };
}

function turnOf(session: Session, now: number): Turn {
  const change = sessionChange(session, now);
  if (!change.tells) return { is: "too-few" };
  if (change.chance < SURE) return { is: "none" };
  const { at, chance, before, after } = change;
  return { is: "turned", at, chance, before: before.value, after: after.value };
}
