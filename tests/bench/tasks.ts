/**
 * What a page's main thread did, from Chromium's own trace. Lengths are the thread's processor time,
 * which does not grow while other programs have the processor.
 */
import type { Browser, Page } from "playwright-core";

export interface Tasks {
  lengthsMs: number[];
}

interface TraceEvent {
  name: string;
  pid: number;
  tid: number;
  /** Microseconds of the thread. */
  tdur?: number;
  args?: { name?: string };
}

const CATEGORIES = ["toplevel", "devtools.timeline"];
const TASK = /RunTask$/;
/** What a page's own timer ran. */
export const TIMER = /^TimerFire$/;

/** Traces a page until what is run in it has come to its end. @param what the names of what counts */
export async function tasksOf(
  browser: Browser,
  page: Page,
  run: () => Promise<unknown>,
  what = TASK,
): Promise<Tasks> {
  await browser.startTracing(page, { categories: CATEGORIES });
  await run();
  const { traceEvents } = JSON.parse((await browser.stopTracing()).toString()) as {
    traceEvents: TraceEvent[];
  };
  return { lengthsMs: lengthsOf(traceEvents, what) };
}

/** Of the main thread that worked most, where a trace has seen several pages. */
function lengthsOf(events: readonly TraceEvent[], what: RegExp): number[] {
  const mains = events.filter(
    ({ name, args }) => name === "thread_name" && args?.name === "CrRendererMain",
  );
  const byThread = mains.map(({ pid, tid }) =>
    events
      .filter((one) => one.pid === pid && one.tid === tid && what.test(one.name))
      .map(({ tdur = 0 }) => tdur / 1000),
  );
  const total = (lengths: readonly number[]) => lengths.reduce((sum, one) => sum + one, 0);
  return byThread.sort((one, other) => total(other) - total(one))[0] ?? [];
}

export const longestOf = ({ lengthsMs }: Tasks): number =>
  lengthsMs.reduce((most, one) => Math.max(most, one), 0);

export const workOf = ({ lengthsMs }: Tasks): number =>
  lengthsMs.reduce((sum, one) => sum + one, 0);

/** More than this and a touch is felt to wait. */
export const LONG_MS = 50;

export const longOf = ({ lengthsMs }: Tasks): number =>
  lengthsMs.filter((one) => one > LONG_MS).length;
