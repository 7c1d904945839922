/** Links, logs and tables that strangers send: taken in whole or refused with a sentence. */
import { deflateSync } from "node:zlib";
import { FACTORS } from "../../../src/analysis/effort/exposure.ts";
import { UNKNOWN_BIAS } from "../../../src/analysis/weights/bias.ts";
import { SteadyClock } from "../../../src/log/clock.ts";
import type { LogEvent } from "../../../src/log/event.ts";
import { foldSession } from "../../../src/log/fold.ts";
import { MemoryStore } from "../../../src/log/memory-store.ts";
import { Refusal } from "../../../src/log/refusal.ts";
import type { Session } from "../../../src/log/session.ts";
import { exportLog } from "../../../src/log/transfer.ts";
import { eventsCsv } from "../../../src/share/csv/events-csv.ts";
import { fishCsv } from "../../../src/share/csv/fish-csv.ts";
import { toFull } from "../../../src/share/link/full.ts";
import { makeCode, readCode } from "../../../src/share/link/link.ts";
import { climbOf } from "../../../src/share/pictures/climb-of.ts";
import { hoursOf } from "../../../src/share/pictures/hours-of.ts";
import { sessionRates } from "../../../src/share/pictures/rates-of.ts";
import { summarise } from "../../../src/share/summary.ts";
import { summaryText } from "../../../src/share/summary-text.ts";
import { takeIn } from "../../../src/share/take-in.ts";
import { entry } from "../../log/session-script.ts";
import { START } from "../../share/days.ts";
import type { Random } from "./mutate.ts";

const ALL = { water: true, peg: true, notes: true };
const STYLES = { weight: "lb-oz", length: "cm" } as const;
const HERE: LogEvent = entry(1, { kind: "drop" }, { id: "here", session: "here" });

export type Damage = (text: string) => string;

/** Whether the input was taken; throws where anything but a refusal went wrong. */
export type InputTrial = (
  events: readonly LogEvent[],
  damage: Damage,
  random: Random,
) => Promise<boolean>;

export const FILES_AND_LINKS: readonly InputTrial[] = [tryLink, tryCode, tryJson, tryCsv];

/** What a link holds, damaged before it is squeezed, so that its checksum is right. */
async function tryLink(events: readonly LogEvent[], damage: Damage): Promise<boolean> {
  const text = damage(JSON.stringify(toFull(foldSession("s", events), START + 1e7, ALL)));
  return opened(`v1.${deflateSync(text).toString("base64url")}`);
}

/** A link damaged on its way. */
async function tryCode(events: readonly LogEvent[], damage: Damage, random: Random) {
  const form = random() < 0.5 ? "full" : "brief";
  const session = foldSession("s", events);
  return opened(damage(await makeCode(session, START + 1e7, { allowed: ALL, form })));
}

async function opened(code: string): Promise<boolean> {
  const shared = await readCode(code).catch(refusalOnly);
  if (!shared) return false;
  summaryText(shared.summary, STYLES, ALL);
  if (shared.session) await lookAt(shared.session, shared.now);
  return true;
}

async function tryJson(events: readonly LogEvent[], damage: Damage): Promise<boolean> {
  const store = new MemoryStore(new SteadyClock());
  await store.put(events);
  const settings = { weight: "kg" };
  return filed(
    damage(JSON.stringify(await exportLog({ store, unsaved: [], now: START, settings }))),
  );
}

async function tryCsv(events: readonly LogEvent[], damage: Damage): Promise<boolean> {
  return filed(damage(eventsCsv(events)));
}

async function filed(text: string): Promise<boolean> {
  const store = new MemoryStore(new SteadyClock());
  await store.put([HERE]);
  const result = await takeIn(store, new Blob([text])).catch(refusalOnly);
  const stored = await store.everything();
  if (!result || "shared" in result) {
    if (stored.length !== 1) throw new Error("A refused file changed the log.");
    return false;
  }
  if (stored.length !== 1 + result.log.added) throw new Error("A file was taken in by half.");
  for (const { id } of await store.sessions()) {
    await lookAt(foldSession(id, stored), START + 1e7);
  }
  await takeIn(store, new Blob([eventsCsv(stored)]));
  if ((await store.everything()).length !== stored.length) throw new Error("A table doubled it.");
  return true;
}

/** All that is made of a session for the eyes and for others. */
export async function lookAt(session: Session, now: number): Promise<void> {
  summaryText(summarise(session, now), STYLES, ALL);
  const climb = climbOf(session, now, UNKNOWN_BIAS);
  if (climb) hoursOf(session, climb);
  if (climb) for (const factor of FACTORS) sessionRates(factor, session, now);
  fishCsv([session]);
  await makeCode(session, now, { allowed: ALL, form: "full" });
}

function refusalOnly(cause: unknown): undefined {
  if (!(cause instanceof Refusal)) throw cause;
  if (!/^[A-Z].*[.]$/s.test(cause.message)) throw new Error(`No sentence: ${cause.message}`);
}
