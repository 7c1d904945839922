/**
 * A whole session for a link: its entries as they stand after every correction, without what was
 * heard, who wrote it on which device, or how it came to be. The fold makes a session of it again.
 */
import * as v from "valibot";
import { eventSchema, type LogEvent, type Plan } from "../../log/event.ts";
import { foldSession } from "../../log/fold.ts";
import type { Entry, Session } from "../../log/session.ts";
import type { Allowed } from "../allowed.ts";
import { fromColumns, type Kind, kindOf, letterOf, toColumns } from "./columns.ts";

/** A day of a thousand fish has some four thousand; squeezed, many more fit a short link and stop a phone. */
const MOST_ENTRIES = 5000;
const MS_PER_SECOND = 1000;
/** Longer than any session is left open; what claims to last for ages makes no pictures. Seconds. */
const LONGEST_S = 366 * 24 * 3600;

/** Larger than anything that is fished for, small enough for any sum. */
const LARGEST = 1e9;

const whole = v.pipe(v.number(), v.integer(), v.minValue(-LARGEST), v.maxValue(LARGEST));
const seconds = v.pipe(whole, v.minValue(0), v.maxValue(LONGEST_S));
const line = v.pipe(v.string(), v.maxLength(10_000));
/** Up to the year 2100. */
const second = v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(4_102_444_800));

export const fullSchema = v.object({
  form: v.literal("full"),
  /** When the first entry was, in seconds since the epoch. */
  from: second,
  /** How far the session had got when the link was made, in seconds from there. */
  now: seconds,
  /** One letter an entry, a capital where it still waits for a look. */
  kinds: v.pipe(v.string(), v.regex(/^[a-z]*$/i), v.maxLength(MOST_ENTRIES)),
  /** Seconds from the entry before. */
  waits: v.pipe(v.array(seconds), v.maxLength(MOST_ENTRIES)),
  words: v.pipe(v.array(line), v.maxLength(MOST_ENTRIES)),
  /** By a kind's letter. */
  columns: v.record(
    v.pipe(v.string(), v.regex(/^[a-z]$/)),
    v.pipe(
      v.array(v.union([v.pipe(v.array(whole), v.maxLength(MOST_ENTRIES)), v.literal(0)])),
      v.maxLength(20),
    ),
  ),
  plan: v.object({
    water: v.optional(line),
    peg: v.optional(line),
    method: v.optional(v.string()),
    notes: v.optional(line),
  }),
  /** What the scales said: a net's number, and grams. */
  scales: v.pipe(
    v.array(v.tuple([v.pipe(whole, v.minValue(0)), v.pipe(whole, v.minValue(0))])),
    v.maxLength(1000),
  ),
});

export type Full = v.InferOutput<typeof fullSchema>;

type Passed = Entry & { statement: { kind: Kind } };

/** @param now milliseconds since the epoch: how far a session that still lasts has got */
export function toFull(session: Session, now: number, allowed: Allowed): Full {
  const entries = session.entries.filter((entry): entry is Passed => isPassed(entry, allowed));
  const times = entries.map(({ at }) => Math.round(at / MS_PER_SECOND));
  const from = times[0] ?? Math.round(now / MS_PER_SECOND);
  const last = times.at(-1) ?? from;
  const words: string[] = [];
  const kinds = [...new Set(entries.map(({ statement }) => statement.kind))];
  return {
    form: "full",
    from,
    now: Math.min(LONGEST_S, Math.max(last, Math.round(now / MS_PER_SECOND)) - from),
    kinds: entries.map(letter).join(""),
    waits: times.map((time, place) => time - (times[place - 1] ?? from)),
    words,
    columns: Object.fromEntries(
      kinds.map((kind) => {
        const same = entries.map(({ statement }) => statement).filter((one) => one.kind === kind);
        return [letterOf(kind), toColumns(kind, same, words)];
      }),
    ),
    plan: planOf(session.plan, allowed),
    scales: session.nets.flatMap(({ number, weighedG }) =>
      weighedG === undefined ? [] : [[number, Math.round(weighedG)] satisfies [number, number]],
    ),
  };
}

const isPassed = ({ statement: { kind } }: Entry, { notes }: Allowed): boolean =>
  kind !== "remind" && (notes || kind !== "note");

function letter({ statement, verdict }: Passed): string {
  const small = letterOf(statement.kind);
  return verdict === "check" ? small.toUpperCase() : small;
}

function planOf({ water, peg, method, notes }: Plan, allowed: Allowed): Full["plan"] {
  return {
    ...(allowed.water && water && { water }),
    ...(allowed.peg && peg && { peg }),
    ...(method && { method }),
    ...(allowed.notes && notes && { notes }),
  };
}

/** The session again, and how far it had got; undefined where the parts do not make one. */
export function fromFull(full: Full): { session: Session; now: number } | undefined {
  const { from, now, kinds, waits, plan, scales } = full;
  if (waits.length !== kinds.length) return undefined;
  const bodies: Pick<LogEvent, "body" | "verdict">[] = [
    { verdict: "log", body: { kind: "plan", plan: plan as Plan } },
    ...entriesOf(full),
    ...scales.map(([net, weightG]) => ({
      verdict: "log" as const,
      body: { kind: "weigh" as const, net, weightG },
    })),
  ];
  let since = 0;
  const events = bodies.map(({ body, verdict }, place) => {
    since += waits[place - 1] ?? 0;
    const at = (from + since) * MS_PER_SECOND;
    const seq = place + 1;
    return { v: 1, id: `e${seq}`, session: ID, device: ID, seq, at, verdict, body };
  });
  if (since > LONGEST_S || now < since) return undefined;
  const read = v.safeParse(v.array(eventSchema), events, { abortEarly: true });
  if (!read.success) return undefined;
  return { session: foldSession(ID, read.output), now: (from + now) * MS_PER_SECOND };
}

/** The session's and the device's id: nothing tells where it came from. */
const ID = "shared";

function entriesOf({ kinds, columns, words }: Full): Pick<LogEvent, "body" | "verdict">[] {
  const rows = new Map<string, number>();
  return [...kinds].map((letter) => {
    const small = letter.toLowerCase();
    const row = rows.get(small) ?? 0;
    rows.set(small, row + 1);
    const kind = kindOf(small);
    // A letter of nobody's makes no statement, which the schema then refuses.
    const statement = kind ? fromColumns(kind, columns[small] ?? [], row, words) : {};
    return {
      verdict: letter === small ? "log" : "check",
      body: { kind: "entry", statement } as LogEvent["body"],
    };
  });
}
