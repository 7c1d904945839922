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
  args?: { name?: string; data?: unknown };
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
  return { lengthsMs: lengthsOf(traceEvents, what, new URL(page.url()).origin) };
}

/** Of the thread that ran what came from there: the browser has pages of its own, heavier than ours. */
function lengthsOf(events: readonly TraceEvent[], what: RegExp, origin: string): number[] {
  const isOf = (one: TraceEvent, thread: TraceEvent) =>
    one.pid === thread.pid && one.tid === thread.tid;
  const main = events
    .filter(({ name, args }) => name === "thread_name" && args?.name === "CrRendererMain")
    .find((thread) => events.some((one) => isOf(one, thread) && names(one, origin)));
  if (!main) throw new Error(`nothing from ${origin} ran while it was traced`);
  return events
    .filter((one) => isOf(one, main) && what.test(one.name))
    .map(({ tdur = 0 }) => tdur / 1000);
}

const names = ({ args }: TraceEvent, origin: string): boolean =>
  args?.data !== undefined && JSON.stringify(args.data).includes(`${origin}/`);

export const longestOf = ({ lengthsMs }: Tasks): number =>
  lengthsMs.reduce((most, one) => Math.max(most, one), 0);

export const workOf = ({ lengthsMs }: Tasks): number =>
  lengthsMs.reduce((sum, one) => sum + one, 0);

/** More than this and a touch is felt to wait. */
export const LONG_MS = 50;

export const longOf = ({ lengthsMs }: Tasks): number =>
  lengthsMs.filter((one) => one > LONG_MS).length;
