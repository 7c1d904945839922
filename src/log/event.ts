/**
 * The log's one record. An event is what was said, typed or touched, made absolute: a spoken
 * "last one" or "fish seven" becomes the id of the event it meant when it was said, so that events
 * which arrive later from another device never change the meaning of a correction.
 *
 * Events are only ever added. To correct is to add an event about another one.
 */
import * as v from "valibot";
import { amendableSchema, type Statement, statementSchema } from "../../grammar/statement.ts";

/** The schema's version, kept in every event so that old logs can be read for ever. */
export const EVENT_VERSION = 1;

/** Half a letter in an id would be another one once it is written down in UTF-8. */
const WHOLE_LETTERS = /^\P{Surrogate}*$/u;
const id = v.pipe(v.string(), v.minLength(1), v.maxLength(64), v.regex(WHOLE_LETTERS));
const line = v.pipe(v.string(), v.maxLength(10_000));
const whole = v.pipe(v.number(), v.integer(), v.minValue(0));

export const heardSchema = v.object({
  text: line,
  /** The recogniser's other guesses, best first, without `text`. */
  alternatives: v.optional(v.array(line)),
  /** 0 to 1; absent where the recogniser gives none. */
  confidence: v.optional(v.number()),
  by: v.picklist(["web", "offline", "typed", "touched"]),
});

const grams = v.pipe(v.number(), v.finite(), v.gtValue(0));
const millimetres = grams;

/** A word the angler added: how it is written, and the ways it is spoken. */
export const ownWordSchema = v.object({
  name: v.pipe(v.string(), v.minLength(1), v.maxLength(80)),
  spoken: v.array(v.pipe(v.string(), v.minLength(1), v.maxLength(80))),
  /** Known words that it sounds like. */
  soundsLike: v.optional(v.pipe(v.string(), v.maxLength(80))),
});

const positive = v.pipe(v.number(), v.finite(), v.gtValue(0));
const shortName = v.pipe(v.string(), v.minLength(1), v.maxLength(80));

/** A rig as it was made up: how deep it is set, the float it hangs from and the shot on it. */
export const planRigSchema = v.object({
  /** As it is said: "2" for "rig two", or a name of the angler's own. */
  name: shortName,
  depthMm: v.optional(millimetres),
  /** Grams the float carries, between the least and the most that its makers mean by its label. */
  float: v.optional(v.object({ label: shortName, lower: positive, upper: positive })),
  shots: v.array(v.object({ size: shortName, count: v.pipe(whole, v.minValue(1)) })),
});

/** What is set before fishing; a later plan replaces the fields it names (null clears one). */
export const planSchema = v.object({
  water: v.optional(v.nullable(line)),
  peg: v.optional(v.nullable(line)),
  method: v.optional(v.nullable(v.picklist(["match", "practice", "coaching"]))),
  /** When fishing may begin and must end, milliseconds since the epoch. */
  startsAt: v.optional(v.nullable(v.number())),
  endsAt: v.optional(v.nullable(v.number())),
  targetG: v.optional(v.nullable(grams)),
  netLimitG: v.optional(v.nullable(grams)),
  /** Most nets that may be used. */
  netsAllowed: v.optional(v.nullable(v.pipe(whole, v.minValue(1)))),
  lashLimitMm: v.optional(v.nullable(millimetres)),
  /** Most bait that may be taken, per bait, in grams. */
  baitLimitsG: v.optional(v.nullable(v.record(v.string(), grams))),
  /** Baits that are not allowed. */
  baitsBanned: v.optional(v.nullable(v.array(shortName))),
  waterDepthMm: v.optional(v.nullable(millimetres)),
  rigs: v.optional(v.nullable(v.array(planRigSchema))),
  /** How fast a bait sinks on its rig, in metres a second, by bait. */
  fallSpeeds: v.optional(v.nullable(v.record(v.string(), positive))),
  ownSpecies: v.optional(v.array(ownWordSchema)),
  ownBaits: v.optional(v.array(ownWordSchema)),
  ownRigs: v.optional(v.array(ownWordSchema)),
  notes: v.optional(v.nullable(line)),
});

/** Statements that are entries of their own: all but corrections and questions. */
const entryKinds = [
  "fish",
  "loss",
  "sign",
  "drop",
  "feed",
  "change",
  "net",
  "conditions",
  "note",
  "session",
  "remind",
] as const;

export type EntryStatement = Extract<Statement, { kind: (typeof entryKinds)[number] }>;

export const isEntryStatement = (statement: Statement): statement is EntryStatement =>
  (entryKinds as readonly string[]).includes(statement.kind);

const entryStatementSchema = v.pipe(
  statementSchema,
  v.check((statement) => isEntryStatement(statement), "a correction or a question is no entry"),
  v.transform((statement) => statement as EntryStatement),
);

const bodySchema = v.variant("kind", [
  /** Something that happened; `beside` is the entry it was split off from. */
  v.object({
    kind: v.literal("entry"),
    statement: entryStatementSchema,
    beside: v.optional(id),
  }),
  /** A line that was heard and not taken; one tap turns it into an entry. */
  v.object({ kind: v.literal("heard") }),
  /** New values for some fields of an entry; `clear` takes fields away. */
  v.object({
    kind: v.literal("amend"),
    target: id,
    set: amendableSchema,
    clear: v.optional(v.array(v.string())),
    /** A new time for the entry, milliseconds since the epoch. */
    at: v.optional(v.number()),
  }),
  /** Another reading of an entry, or an entry made out of a heard line. */
  v.object({ kind: v.literal("replace"), target: id, statement: entryStatementSchema }),
  /** The targets no longer count. A withdrawal can itself be withdrawn: that is undo and redo. */
  v.object({ kind: v.literal("withdraw"), targets: v.array(id) }),
  /** Looked at and found right: takes the entry off the list to look at. */
  v.object({ kind: v.literal("settle"), target: id }),
  v.object({ kind: v.literal("plan"), plan: planSchema }),
  /** What the scales said of one net. */
  v.object({ kind: v.literal("weigh"), net: whole, weightG: v.pipe(v.number(), v.minValue(0)) }),
]);

export const eventSchema = v.object({
  v: v.literal(EVENT_VERSION),
  /** UUIDv7. */
  id,
  session: id,
  device: id,
  /** Counts up by one on each device, from 1. */
  seq: v.pipe(v.number(), v.integer(), v.minValue(1)),
  /** When it was spoken, milliseconds since the epoch; never runs backwards within a device. */
  at: v.pipe(v.number(), v.finite()),
  /** Shared by the statements of one utterance, which one "scratch that" takes back together. */
  group: v.optional(id),
  heard: v.optional(heardSchema),
  verdict: v.picklist(["log", "check", "ignore"]),
  body: bodySchema,
});

export type LogEvent = v.InferOutput<typeof eventSchema>;
export type EventBody = LogEvent["body"];
export type Heard = v.InferOutput<typeof heardSchema>;
export type Plan = v.InferOutput<typeof planSchema>;
export type PlanRig = v.InferOutput<typeof planRigSchema>;
export type OwnWord = v.InferOutput<typeof ownWordSchema>;
export type Verdict = LogEvent["verdict"];

/**
 * An event before the store has numbered it. Its id is there from the start (`newId`), so that the
 * next thing said can be about it even while storing fails, and storing it twice adds it once.
 */
export type EventDraft = Omit<LogEvent, "v" | "device" | "seq" | "at"> & {
  /** When it was spoken, by the wall clock in milliseconds since the epoch; absent for now. */
  at?: number;
};
