/** Writes a session down as a list of short lines, for tests to read like a session. */
import type { Amendable } from "../../grammar/statement.ts";
import type { EntryStatement, EventBody, LogEvent } from "../../src/log/event.ts";

export const SESSION = "session-a";
export const START = Date.UTC(2026, 5, 6, 9, 0, 0);
export const MINUTE_MS = 60_000;

/** An event said by `device` as its `seq`th, `seq` minutes after the start. */
export function event(seq: number, body: EventBody, more: Partial<LogEvent> = {}): LogEvent {
  return {
    v: 1,
    id: `e${seq}`,
    session: SESSION,
    device: "phone",
    seq,
    at: START + seq * MINUTE_MS,
    verdict: "log",
    body,
    ...more,
  };
}

export const entry = (seq: number, statement: EntryStatement, more: Partial<LogEvent> = {}) =>
  event(seq, { kind: "entry", statement }, more);

export const heard = (seq: number, text: string) =>
  event(seq, { kind: "heard" }, { heard: { text, by: "web" }, verdict: "ignore" });

export const amend = (seq: number, target: string, set: Amendable, clear?: string[]) =>
  event(seq, { kind: "amend", target, set, ...(clear && { clear }) });

export const replace = (seq: number, target: string, statement: EntryStatement) =>
  event(seq, { kind: "replace", target, statement });

export const withdraw = (seq: number, ...targets: string[]) =>
  event(seq, { kind: "withdraw", targets });

export const settle = (seq: number, target: string) => event(seq, { kind: "settle", target });

export const weighed = (seq: number, net: number, weightG: number) =>
  event(seq, { kind: "weigh", net, weightG });
