/** Any interleaving of two phones' events, repeated and reordered, gives the same session. */
import { isDeepStrictEqual } from "node:util";
import fc from "fast-check";
import { SteadyClock } from "../../../src/log/clock.ts";
import type { LogEvent } from "../../../src/log/event.ts";
import { foldSession, SessionFold } from "../../../src/log/fold.ts";
import { MemoryStore } from "../../../src/log/memory-store.ts";
import type { Session } from "../../../src/log/session.ts";
import { mergeEvents } from "../../../src/log/transfer.ts";
import { SESSION } from "../../log/session-script.ts";
import { type Case, merging } from "./two-phones.ts";

export interface MergingReport {
  /** The smallest case that went wrong, and how to have it again. */
  faults: string[];
  /** Cases in which something was taken back, put right, split off, or came twice. */
  withdrawn: number;
  corrected: number;
  pieces: number;
  repeated: number;
}

/** @param seed gives the same cases again */
export async function tryMerging(cases: number, seed: number): Promise<MergingReport> {
  const report: MergingReport = { faults: [], withdrawn: 0, corrected: 0, pieces: 0, repeated: 0 };
  const property = fc.asyncProperty(merging, async (one) => {
    const whole = foldSession(SESSION, one.events);
    count(report, one, whole);
    follow(one);
    await exchange(one, whole);
  });
  const run = await fc.check(property, { numRuns: cases, seed, endOnFailure: false });
  if (run.failed) report.faults.push(fc.defaultReportMessage(run) ?? "failed");
  return report;
}

function count(report: MergingReport, { events, arrivals }: Case, whole: Session): void {
  if (whole.withdrawn.length > 0) report.withdrawn += 1;
  if (whole.corrections.length > 0) report.corrected += 1;
  if (events.some(({ body }) => body.kind === "entry" && body.beside)) report.pieces += 1;
  if (arrivals.length > events.length) report.repeated += 1;
}

/** A session kept up to date as events arrive is at every look the session of those so far. */
function follow({ arrivals, looks }: Case): void {
  const running = new SessionFold(SESSION);
  arrivals.forEach((event, place) => {
    running.add(event);
    if (looks[place] || place === arrivals.length - 1) {
      const sofar = arrivals.slice(0, place + 1);
      expectSame(running.session, foldSession(SESSION, once(sofar)), `after ${place + 1}`);
    }
  });
}

/** Both phones get the other's events in pieces, through their stores; both show the same then. */
async function exchange({ events, arrivals, looks }: Case, whole: Session): Promise<void> {
  for (const phone of ["left", "right"]) {
    const store = new MemoryStore(new SteadyClock());
    await store.put(events.filter(({ device }) => device === phone));
    let parcel: LogEvent[] = [];
    for (const [place, event] of arrivals.entries()) {
      parcel.push(event);
      if (!looks[place] && place < arrivals.length - 1) continue;
      await mergeEvents(store, parcel);
      parcel = [];
    }
    expectSame(foldSession(SESSION, await store.session(SESSION)), whole, `on the ${phone} phone`);
  }
}

/** Each once, in an order of its own, so that the fold itself is not asked who comes first. */
const once = (events: readonly LogEvent[]): LogEvent[] =>
  [...new Map(events.map((event) => [event.id, event])).values()].sort((one, other) =>
    one.id < other.id ? -1 : 1,
  );

function expectSame(one: Session, other: Session, where: string): void {
  if (!isDeepStrictEqual(one, other)) throw new Error(`Another session ${where}.`);
}
