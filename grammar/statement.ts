/**
 * What one phrase can state. This schema is the one definition; every type is inferred from it.
 *
 * Weights are grams and lengths millimetres in full precision (2 lb is 907.18474), temperatures are
 * degrees Celsius, durations milliseconds. A field that was not said is absent. `unit` keeps the
 * units that were spoken, so that a value can be said back the same way.
 */
import * as v from "valibot";

/** The longest note, in letters. */
export const LONGEST_TEXT = 2000;
const text = v.pipe(v.string(), v.minLength(1), v.maxLength(LONGEST_TEXT));
const finite = v.pipe(v.number(), v.finite());
const positive = v.pipe(finite, v.gtValue(0));
const whole = v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(10_000));

export const WEIGHT_UNITS = ["lb", "oz", "kg", "g"] as const;
export const LENGTH_UNITS = ["in", "ft", "mm", "cm", "m"] as const;

const unit = v.object({
  weight: v.optional(v.picklist(WEIGHT_UNITS)),
  length: v.optional(v.picklist(LENGTH_UNITS)),
});

/** Species, baits and rigs are open lists: the angler adds his own, so the schema takes any name. */
const name = v.pipe(v.string(), v.minLength(1), v.maxLength(80));

/** What can be said of a fish that was landed; `weightG` is one fish's, also where `count` is more. */
const fishFields = {
  species: v.optional(name),
  weightG: v.optional(positive),
  lengthMm: v.optional(positive),
  count: v.optional(whole),
  approx: v.optional(v.literal(true)),
  foul: v.optional(v.literal(true)),
  unit: v.optional(unit),
};

/** What can be said of the set-up; a positive `…ByMm` is deeper, further or longer. */
const changeFields = {
  rig: v.optional(name),
  depthMm: v.optional(positive),
  depthByMm: v.optional(finite),
  distanceMm: v.optional(positive),
  distanceByMm: v.optional(finite),
  hook: v.optional(whole),
  bait: v.optional(name),
  baitNote: v.optional(name),
  lashMm: v.optional(positive),
  lashByMm: v.optional(finite),
  unit: v.optional(unit),
};

export const LOSS_CAUSES = ["off", "pulled", "snapped", "foul", "net"] as const;
export const SIGN_SORTS = ["bite", "missed", "knock", "liner"] as const;
export const FEED_WAYS = ["catapult", "pot", "hand"] as const;
export const SESSION_ACTS = ["start", "pause", "resume", "stop"] as const;
export const TALKBACK_LEVELS = ["tones", "short", "full"] as const;
export const QUESTIONS = [
  "total",
  "count",
  "lost",
  "bites",
  "biggest",
  "fed",
  "last-fish",
  "rate",
  "best-depth",
  "best-rig",
  "best-bait",
  "best-distance",
  "best-hook",
  "best-hour",
  "start",
  "bite-depth",
  "bite-time",
  "mood",
  "sure",
  "again",
  "net",
  "pace",
  "time-left",
  "set-up",
] as const;

/** The entry an amendment or a withdrawal is about: the last one, or a fish by its number. */
const target = v.union([v.literal("last"), whole]);

/** Fields that an amendment may set: any of the entry's own, whatever its kind. */
export const amendableSchema = v.object({
  ...fishFields,
  ...changeFields,
  cause: v.optional(v.picklist(LOSS_CAUSES)),
  number: v.optional(whole),
});

export const statementSchema = v.variant("kind", [
  v.object({ kind: v.literal("fish"), ...fishFields }),
  v.object({
    kind: v.literal("loss"),
    cause: v.picklist(LOSS_CAUSES),
    species: v.optional(name),
  }),
  v.object({ kind: v.literal("sign"), sort: v.picklist(SIGN_SORTS) }),
  v.object({ kind: v.literal("drop") }),
  v.object({
    kind: v.literal("feed"),
    times: v.optional(whole),
    amountG: v.optional(positive),
    bait: v.optional(name),
    baitNote: v.optional(name),
    how: v.optional(v.picklist(FEED_WAYS)),
    unit: v.optional(unit),
  }),
  v.object({ kind: v.literal("change"), ...changeFields }),
  v.object({ kind: v.literal("net"), number: v.optional(whole) }),
  v.object({
    kind: v.literal("conditions"),
    wind: v.optional(name),
    sky: v.optional(name),
    waterC: v.optional(finite),
    airC: v.optional(finite),
  }),
  v.object({ kind: v.literal("note"), text }),
  v.object({ kind: v.literal("amend"), of: target, set: amendableSchema }),
  v.object({ kind: v.literal("withdraw"), of: target }),
  v.object({ kind: v.literal("ask"), what: v.picklist(QUESTIONS) }),
  v.object({ kind: v.literal("session"), act: v.picklist(SESSION_ACTS) }),
  /** How much the phone is to say; like a question it is answered and not logged. */
  v.object({ kind: v.literal("talkback"), level: v.picklist(TALKBACK_LEVELS) }),
  v.object({
    kind: v.literal("remind"),
    everyMs: v.pipe(finite, v.minValue(0)),
    about: v.optional(text),
  }),
]);

export type Statement = v.InferOutput<typeof statementSchema>;
export type Kind = Statement["kind"];
export type StatementOf<K extends Kind> = Extract<Statement, { kind: K }>;
export type Amendable = v.InferOutput<typeof amendableSchema>;
export type Unit = v.InferOutput<typeof unit>;
export type WeightUnit = (typeof WEIGHT_UNITS)[number];
export type LengthUnit = (typeof LENGTH_UNITS)[number];
export type Question = (typeof QUESTIONS)[number];
export type Target = v.InferOutput<typeof target>;
