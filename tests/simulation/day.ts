/** A simulated day: what was so, and the session that the log makes of what was told of it. */
import type { EventBody, LogEvent, Plan } from "../../src/log/event.ts";
import { foldSession } from "../../src/log/fold.ts";
import type { Session } from "../../src/log/session.ts";
import { at } from "../analysis/fixtures/session.ts";
import {
  type Angler,
  drawDayLow,
  fishDay,
  type Landed,
  planStays,
  type Stay,
  type Ways,
} from "./fishing.ts";
import type { Random } from "./random.ts";
import { type Hearing, tell } from "./telling.ts";
import type { Water } from "./water.ts";

export interface Kind extends Ways, Hearing {}

export interface Day {
  kind: Kind;
  water: Water;
  angler: Angler;
  /** Mean of ln(true weight / judged weight) on this day. */
  low: number;
  stays: readonly Stay[];
  landed: readonly (Landed & { minute: number })[];
  events: readonly LogEvent[];
}

export function drawDay(kind: Kind, water: Water, angler: Angler, random: Random): Day {
  const stays = planStays(water, kind, random);
  const low = drawDayLow(angler, random);
  const happenings = fishDay(water, kind, stays, low, random);
  const landed = happenings.flatMap((one) =>
    one.what === "landed" ? [{ ...one.fish, minute: one.minute }] : [],
  );
  return { kind, water, angler, low, stays, landed, events: tell(happenings, kind, random) };
}

/** An event that no voice had to carry. */
const touched = (seq: number, minute: number, body: EventBody): LogEvent => ({
  v: 1,
  id: `t${seq}`,
  session: "s",
  device: "t",
  seq,
  at: at(minute),
  verdict: "log",
  body,
});

/** The session as it stood at a minute of the day, with a plan from before. */
export function sessionAt({ events }: Day, minute: number, plan: Plan = {}): Session {
  const told = events.filter((event) => event.at <= at(minute));
  return foldSession("s", [touched(1, -1, { kind: "plan", plan }), ...told]);
}

/** Grams that were truly landed by a minute of the day, in one net or all. */
export const gramsAt = ({ landed }: Day, minute: number, net?: number): number =>
  landed.reduce(
    (total, fish) =>
      fish.minute <= minute && (net === undefined || fish.net === net) ? total + fish.grams : total,
    0,
  );

/** The whole session under an id of its own, every net of it on the scales. */
export function weighedSession(day: Day, minute: number, id: string): Session {
  const nets = new Set(day.landed.map(({ net }) => net));
  const weighed = [...nets].map((net, place) =>
    touched(place + 2, minute, { kind: "weigh", net, weightG: gramsAt(day, minute, net) }),
  );
  return { ...foldSession("s", [...day.events, ...weighed]), id };
}
