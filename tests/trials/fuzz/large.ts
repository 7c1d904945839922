/** Days far larger than any, in shapes that cost the most: none may stop the phone. */
import type { LogEvent } from "../../../src/log/event.ts";
import { foldSession } from "../../../src/log/fold.ts";
import { START } from "../../share/days.ts";
import { lookAt } from "./inputs.ts";

/** Four times what a link may hold (`src/share/link/full.ts`); files hold more. */
const EVENTS = 20_000;
const SECOND_MS = 1000;
const US_PER_MS = 1000;

type Body = LogEvent["body"];
const entry = (statement: Extract<Body, { kind: "entry" }>["statement"]): Body => ({
  kind: "entry",
  statement,
});
const id = (place: number) => `e${place}`;
const FISH = entry({ kind: "fish", weightG: 500 });

/** What stands at each place of a day. */
export const SHAPES: Readonly<Record<string, (place: number) => Body>> = {
  "a withdrawal of a withdrawal of …": (n) =>
    n === 0 ? FISH : { kind: "withdraw", targets: [id(n - 1)] },
  "withdrawals of what comes later": (n) =>
    n === EVENTS - 1 ? FISH : { kind: "withdraw", targets: [id(n + 1)] },
  "one fish amended again and again": (n) =>
    n === 0 ? FISH : { kind: "amend", target: id(0), set: { weightG: n } },
  "pieces of pieces": (n) => (n === 0 ? FISH : { ...FISH, beside: id(n - 1) }),
  "pieces in a ring": (n) => ({ ...FISH, beside: id((n + 1) % EVENTS) }),
  "fish that swap their times": (n) =>
    n < EVENTS / 2
      ? FISH
      : {
          kind: "amend",
          target: id(n - EVENTS / 2),
          set: {},
          at: START + (EVENTS - n) * SECOND_MS,
        },
  "a break after every start": (n) =>
    entry({ kind: "session", act: n % 2 === 0 ? "resume" : "pause" }),
  "a new rig for each fish": (n) =>
    n % 2 === 0 ? entry({ kind: "change", rig: `r${n}`, depthMm: 100 * (n + 1) }) : FISH,
  "a species for each fish": (n) => entry({ kind: "fish", species: `s${n}`, weightG: n + 1 }),
  "a net for each fish": (n) => (n % 2 === 0 ? entry({ kind: "net", number: n + 1 }) : FISH),
  "a bait for each feed": (n) => entry({ kind: "feed", bait: `b${n}`, amountG: n + 1 }),
  "drops without bites": () => entry({ kind: "drop" }),
  "a plan for each second": (n) => ({ kind: "plan", plan: { water: `w${n}` } }),
};

/** What the process works to make a session of such a day, and then to show it and pass it on. */
export async function costOf(
  shape: (place: number) => Body,
): Promise<{ foldMs: number; showMs: number }> {
  const events = Array.from({ length: EVENTS }, (_, n): LogEvent => {
    const numbered = { v: 1 as const, id: id(n), session: "s", device: "d", seq: n + 1 };
    return { ...numbered, at: START + n * SECOND_MS, verdict: "log", body: shape(n) };
  });
  const before = process.cpuUsage();
  const session = foldSession("s", events);
  const folded = process.cpuUsage(before);
  const looked = process.cpuUsage();
  await lookAt(session, START + EVENTS * SECOND_MS);
  return { foldMs: msOf(folded), showMs: msOf(process.cpuUsage(looked)) };
}

const msOf = ({ user, system }: NodeJS.CpuUsage): number => (user + system) / US_PER_MS;
