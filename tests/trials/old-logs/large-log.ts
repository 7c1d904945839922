/** A log of version 1 with many sessions in it, for a page to make and a trial to look for. */
import type { LogEvent } from "../../../src/log/event.ts";
import { makeV1, V1_DEVICE, V1_EVENTS } from "../../browser/store-v1.ts";

const SESSIONS = 40;
const DAY_MS = 86_400_000;
const MINUTE_MS = 60_000;

/** Written last, and here: in the session that was open then. */
const LAST: LogEvent = {
  ...{ v: 1, id: "v1-4", session: "saturday", device: V1_DEVICE.id, seq: V1_DEVICE.seq + 1 },
  ...{ at: V1_DEVICE.lastAt + MINUTE_MS, verdict: "log" },
  body: { kind: "entry", statement: { kind: "drop" } },
};
const DEVICE = { ...V1_DEVICE, seq: LAST.seq, lastAt: LAST.at };

/** All that is in it: so many events, and the few that every log of version 1 has. */
export const largeLog = (count: number): LogEvent[] => [...V1_EVENTS, ...more(count), LAST];

/** Makes it and leaves it closed. */
export const makeLarge = (name: string, count: number): Promise<void> =>
  makeV1(name, [...more(count), LAST], DEVICE);

function more(count: number): LogEvent[] {
  const first = V1_DEVICE.lastAt - SESSIONS * DAY_MS;
  return Array.from({ length: count }, (_, n) => {
    const day = n % SESSIONS;
    return {
      ...{ v: 1, id: `many-${n}`, session: `day-${day}`, device: "device-of-the-season" },
      ...{ seq: n + 1, at: first + day * DAY_MS + Math.floor(n / SESSIONS) * MINUTE_MS },
      verdict: "log",
      heard: { text: `roach ${n} ounces`, by: "web" },
      body: {
        kind: "entry",
        statement: { kind: "fish", species: "roach", weightG: 28 + (n % 900) },
      },
    };
  });
}
