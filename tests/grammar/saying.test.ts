import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  GRAMS_PER_OUNCE,
  GRAMS_PER_POUND,
  MM_PER_FOOT,
  MM_PER_INCH,
} from "../../grammar/quantity/units.ts";
import { createReader } from "../../grammar/read.ts";
import { say } from "../../grammar/say.ts";
import {
  FEED_WAYS,
  LOSS_CAUSES,
  QUESTIONS,
  SESSION_ACTS,
  SIGN_SORTS,
  type Statement,
  TALKBACK_LEVELS,
} from "../../grammar/statement.ts";
import { BAITS } from "../../grammar/vocabulary/baits.ts";
import { SPECIES } from "../../grammar/vocabulary/species.ts";
import { isAlike } from "./alike.ts";
import { paraphrases } from "./tables/paraphrases.ts";

const reader = createReader();

/** Sizes as they are said: in steps of a quarter ounce, a tenth of a kilo and so on. */
const stepped = (least: number, most: number, step: number) =>
  fc.integer({ min: Math.round(least / step), max: Math.round(most / step) }).map((n) => n * step);

const weight = fc.oneof(
  stepped(1, 1600, 0.25).map((oz) => ({
    weightG: oz * GRAMS_PER_OUNCE,
    unit: { weight: "lb" as const },
  })),
  stepped(0.25, 40, 0.25).map((oz) => ({
    weightG: oz * GRAMS_PER_OUNCE,
    unit: { weight: "oz" as const },
  })),
  stepped(1, 60, 0.25).map((lb) => ({
    weightG: lb * GRAMS_PER_POUND,
    unit: { weight: "lb" as const },
  })),
  stepped(0.1, 30, 0.05).map((kg) => ({ weightG: kg * 1000, unit: { weight: "kg" as const } })),
  stepped(5, 5000, 5).map((g) => ({ weightG: g, unit: { weight: "g" as const } })),
);

const lengthIn = (most: number) =>
  fc.oneof(
    stepped(1, most / 10, 0.5).map((cm) => ({ mm: cm * 10, unit: { length: "cm" as const } })),
    stepped(0.25, most / 25.4, 0.25).map((n) => ({
      mm: n * MM_PER_INCH,
      unit: { length: "in" as const },
    })),
    stepped(0.5, most / 304.8, 0.25).map((n) => ({
      mm: n * MM_PER_FOOT,
      unit: { length: "ft" as const },
    })),
    stepped(0.1, most / 1000, 0.05).map((m) => ({ mm: m * 1000, unit: { length: "m" as const } })),
  );

const species = fc.constantFrom(...SPECIES.map(({ id }) => id));
const bait = fc.constantFrom(...BAITS.map(({ id }) => id));
const baitNote = fc.constantFrom("red", "six mil", "red six mil", "white", "4 mil", "yellow 8 mil");
const whole = (most: number) => fc.integer({ min: 1, max: most });
const maybe = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: undefined });
const target = fc.oneof(fc.constant("last" as const), whole(200));

/** Leaves out what is undefined, as a statement must. */
const tidy = (fields: object): Statement =>
  Object.fromEntries(
    Object.entries(fields).filter(([, value]) => value !== undefined),
  ) as Statement;

const fish = fc
  .record({
    species: maybe(species),
    size: maybe(weight),
    length: maybe(lengthIn(900)),
    count: maybe(fc.integer({ min: 2, max: 30 })),
    approx: maybe(fc.constant(true)),
    foul: maybe(fc.constant(true)),
  })
  .map(({ size, length, approx, ...rest }) =>
    tidy({
      kind: "fish",
      ...rest,
      weightG: size?.weightG,
      lengthMm: length?.mm,
      approx: size || length ? approx : undefined,
      unit: size || length ? { ...size?.unit, ...length?.unit } : undefined,
    }),
  );

const lengthField = (field: string, most: number) =>
  lengthIn(most).map(({ mm, unit }) => tidy({ kind: "change", [field]: mm, unit }));

const byField = (field: string, most: number) =>
  fc
    .tuple(lengthIn(most), fc.constantFrom(-1, 1))
    .map(([{ mm, unit }, sign]) => tidy({ kind: "change", [field]: sign * mm, unit }));

const distance = stepped(2, 16, 0.5).map((m) =>
  tidy({ kind: "change", distanceMm: m * 1000, unit: { length: "m" } }),
);

const change = fc.oneof(
  whole(12).map((n) => tidy({ kind: "change", rig: String(n) })),
  fc.constantFrom("shallow", "margin", "deep").map((rig) => tidy({ kind: "change", rig })),
  lengthField("depthMm", 4000),
  byField("depthByMm", 1000),
  distance,
  byField("distanceByMm", 4000),
  whole(12).map((n) => tidy({ kind: "change", hook: 2 * n })),
  fc.record({ bait, baitNote: maybe(baitNote) }).map((b) => tidy({ kind: "change", ...b })),
  lengthField("lashMm", 900),
  byField("lashByMm", 400),
  fc
    .record({ rig: whole(9).map(String), hook: whole(12).map((n) => 2 * n), bait })
    .map((c) => tidy({ kind: "change", ...c })),
  fc.constant(tidy({ kind: "change" })),
);

const feed = fc
  .record({
    times: maybe(whole(12)),
    amount: maybe(stepped(5, 2000, 5)),
    bait: maybe(bait),
    how: maybe(fc.constantFrom(...FEED_WAYS)),
  })
  .map(({ amount, ...rest }) =>
    tidy({
      kind: "feed",
      ...rest,
      amountG: amount,
      unit: amount === undefined ? undefined : { weight: "g" },
    }),
  );

const words = fc
  .array(
    fc.constantFrom("fish", "two", "pounds", "topping", "wind", "reeds", "carp", "by", "the"),
    {
      minLength: 1,
      maxLength: 8,
    },
  )
  .map((parts) => parts.join(" "))
  .filter((text) => !/^(by|the)\b/.test(text));

const conditions = fc.oneof(
  fc
    .constantFrom("rising", "dropping", "strong", "calm", "light", "north", "south-west", "facing")
    .map((wind) => tidy({ kind: "conditions", wind })),
  fc
    .constantFrom("sun", "cloud", "rain", "heavy rain", "drizzle", "dry", "fog", "snow", "clearing")
    .map((sky) => tidy({ kind: "conditions", sky })),
  stepped(0, 30, 0.5).map((waterC) => tidy({ kind: "conditions", waterC })),
  stepped(-15, 35, 0.5).map((airC) => tidy({ kind: "conditions", airC })),
  fc
    .record({ waterC: stepped(1, 30, 0.5), airC: stepped(1, 30, 0.5) })
    .map((c) => tidy({ kind: "conditions", ...c })),
);

const set = fc.oneof(
  weight,
  lengthIn(900).map(({ mm, unit }) => ({ lengthMm: mm, unit })),
  species.map((name) => ({ species: name })),
  fc
    .record({ species, size: weight })
    .map(({ species: name, size }) => ({ species: name, ...size })),
  fc.constant({ foul: true as const }),
);
const lastSet = fc.oneof(
  set,
  whole(9).map((n) => ({ rig: String(n) })),
  whole(9).map((n) => ({ hook: 2 * n })),
  whole(9).map((number) => ({ number })),
  bait.map((name) => ({ bait: name })),
  fc.constantFrom("off", "pulled", "snapped", "foul", "net").map((cause) => ({ cause })),
);

const ARBITRARIES: Readonly<Record<Statement["kind"], fc.Arbitrary<Statement>>> = {
  fish,
  loss: fc
    .record({ cause: fc.constantFrom(...LOSS_CAUSES), species: maybe(species) })
    .map((loss) => tidy({ kind: "loss", ...loss })),
  sign: fc.constantFrom(...SIGN_SORTS).map((sort) => ({ kind: "sign", sort })),
  drop: fc.constant({ kind: "drop" }),
  feed,
  change,
  net: maybe(whole(9)).map((number) => tidy({ kind: "net", number })),
  conditions,
  note: words.map((text) => ({ kind: "note", text })),
  amend: fc.oneof(
    lastSet.map((values) => tidy({ kind: "amend", of: "last", set: values })),
    fc.tuple(whole(200), set).map(([of, values]) => tidy({ kind: "amend", of, set: values })),
  ),
  withdraw: target.map((of) => ({ kind: "withdraw", of })),
  ask: fc.constantFrom(...QUESTIONS).map((what) => ({ kind: "ask", what })),
  session: fc.constantFrom(...SESSION_ACTS).map((act) => ({ kind: "session", act })),
  talkback: fc.constantFrom(...TALKBACK_LEVELS).map((level) => ({ kind: "talkback", level })),
  remind: fc
    .record({
      minutes: fc.integer({ min: 0, max: 90 }),
      about: maybe(fc.constantFrom("feed", "check the depth")),
    })
    .map(({ minutes, about }) =>
      tidy({ kind: "remind", everyMs: minutes * 60_000, about: minutes > 0 ? about : undefined }),
    ),
};

describe("what is said is read back as the same statement", () => {
  it.each(Object.entries(ARBITRARIES))("%s", (_, arbitrary) => {
    fc.assert(
      fc.property(arbitrary, (statement) => {
        const said = say(statement);
        const { statements, verdict } = reader.read([said]);
        expect(isAlike([statement], statements), `${said} → ${JSON.stringify(statements)}`).toBe(
          true,
        );
        expect(verdict, said).not.toBe("ignore");
        expect(unitOf(statements[0]), said).toEqual(unitOf(statement));
      }),
      { numRuns: 400 },
    );
  });

  it("for everything the paraphrases mean, several statements in a breath included", () => {
    const lines = paraphrases.flatMap(({ said }) => said);
    const broken = lines.filter((line) => {
      const { statements } = reader.read([line]);
      return !isAlike(statements, reader.read([statements.map(say).join(", ")]).statements);
    });
    expect(broken).toEqual([]);
  });
});

const unitOf = (statement: Statement | undefined): unknown =>
  statement && "unit" in statement ? statement.unit : undefined;
