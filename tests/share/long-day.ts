/** A busy day: for each fish a drop, a sign, feed, and now and then a loss or another set-up. */
import type { EntryStatement, LogEvent } from "../../src/log/event.ts";
import type { Session } from "../../src/log/session.ts";
import { sessionOf } from "../analysis/fixtures/session.ts";

const OUNCE_G = 28.349523125;

/** @param random even numbers from 0 to 1 */
export function longDay(fish: number, random: () => number): Session {
  const pick = <T>(...of: readonly [T, ...T[]]): T => of[Math.floor(random() * of.length)] ?? of[0];
  const lines: [number, EntryStatement][] = [];
  let minute = 0;
  const say = (wait: number, statement: EntryStatement) => {
    minute += wait * random();
    lines.push([minute, statement]);
  };
  for (let n = 0; n < fish; n += 1) {
    if (n % 10 === 0) {
      say(0.2, {
        kind: "change",
        rig: pick("1", "2", "3"),
        depthMm: pick(400, 600, 1200, 1800),
        bait: pick("pellet", "maggot", "worm"),
        hook: pick(16, 18),
      });
    }
    say(0.4, { kind: "drop" });
    say(0.8, { kind: "sign", sort: pick("bite", "missed", "knock", "liner") });
    if (random() < 0.1) say(0.2, { kind: "loss", cause: pick("off", "pulled", "snapped") });
    say(0.4, {
      kind: "fish",
      species: pick("f1", "skimmer", "carp", "roach", "tench"),
      weightG: Math.ceil(random() * 80) * OUNCE_G,
      ...(random() < 0.3 && { lengthMm: 10 * Math.ceil(20 + random() * 30) }),
      unit: { weight: "lb" },
    });
    say(0.2, { kind: "feed", how: "pot", bait: "pellet" });
  }
  say(0.2, { kind: "session", act: "stop" });
  const session = sessionOf(lines, { plan: { water: "Osier Lake", peg: "17" } });
  const endedAt = session.entries.at(-1)?.at ?? 0;
  return { ...session, state: "ended", endedAt };
}

/** The same day as a log file holds it. */
export function logOf({ id, entries, plan }: Session): string {
  const bodies: Pick<LogEvent, "at" | "body">[] = [
    { at: entries[0]?.at ?? 0, body: { kind: "plan", plan } },
    ...entries.map(({ at, statement }) => ({ at, body: { kind: "entry" as const, statement } })),
  ];
  const events = bodies.map((one, place): LogEvent => {
    const seq = place + 1;
    return { v: 1, id: `${id}-${seq}`, session: id, device: "d", seq, verdict: "log", ...one };
  });
  const head = { format: "pegscribe-log", version: 1, exportedAt: 0 };
  return JSON.stringify({ ...head, events, damaged: [] });
}
