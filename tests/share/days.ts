/** Days made up by fast-check, as events through the fold: whatever an angler may say, in any order. */
import fc from "fast-check";
import type { EntryStatement, LogEvent } from "../../src/log/event.ts";

export const START = Date.UTC(2026, 5, 6, 9);

/** Text of all sorts: plain, in other scripts, markup, formulas, lines broken. */
export const INJECTIONS: readonly string[] = [
  "<script>window.ran = true</script>",
  '<img src=x onerror="window.ran=true">',
  '"><svg onload=window.ran=true>',
  "javascript:window.ran=true",
  "</text></svg><script>window.ran=true</script>",
  "]]><script>window.ran=true</script>",
  "<svg><foreignObject><img src=x onerror=window.ran=1>",
  '<a href="javascript:window.ran=true">',
  "data:text/html,<script>window.ran=true</script>",
  "<!--",
  "&lt;b&gt;",
  "&#60;script&#62;",
  "{{constructor}}",
  "\x24{window.ran=true}",
  '=HYPERLINK("http://x","y")',
  "+1+1",
  "-2+3",
  "@SUM(A1)",
  "\t=1+1",
  "\r=1+1",
  "'=1+1",
  "''@x",
  " =1+1",
  "\n=1+1",
  "＝1+1",
  "a;=1+1",
  "\u2028=1+1",
  "__proto__",
  "constructor",
  "toString",
  "a,b;c\td",
  'say "so"',
  "line\r\nline",
  "\u0000\u0007",
  "\u202Eright to left",
  "Jörg’s Weiher, ½ lb",
  "鯉",
  "🐟",
];

export const text = fc.oneof(
  fc.constantFrom(...INJECTIONS),
  fc.string({ minLength: 1, maxLength: 60, unit: "grapheme" }),
);
export const name = text.map((one) => one.slice(0, 80));

const maybe = <T>(field: fc.Arbitrary<T>) => fc.option(field, { nil: undefined });
const size = fc.oneof(
  fc.integer({ min: 1, max: 40_000 }),
  fc.integer({ min: 1, max: 2000 }).map((quarters) => (quarters * 28.349523125) / 4),
  fc.double({ min: 0.001, max: 1e7, noNaN: true }),
);
const whole = fc.integer({ min: 1, max: 40 });
const shift = fc.integer({ min: -2000, max: 2000 });
const unit = fc.record(
  {
    weight: fc.constantFrom("lb" as const, "oz" as const, "kg" as const, "g" as const),
    length: fc.constantFrom("in" as const, "ft" as const, "mm" as const, "cm" as const),
  },
  { requiredKeys: [] },
);

const said = <T extends object>(fields: fc.Arbitrary<T>) =>
  fields.map(
    (one) =>
      Object.fromEntries(
        Object.entries(one).filter(([, value]) => value !== undefined),
      ) as unknown as EntryStatement,
  );

const kind = <K extends EntryStatement["kind"]>(of: K) => fc.constant(of);

export const statement: fc.Arbitrary<EntryStatement> = fc.oneof(
  {
    weight: 5,
    arbitrary: said(
      fc.record({
        kind: kind("fish"),
        species: maybe(fc.oneof(fc.constantFrom("carp", "f1", "roach"), name)),
        weightG: maybe(size),
        lengthMm: maybe(size),
        count: maybe(whole),
        approx: maybe(fc.constant(true)),
        foul: maybe(fc.constant(true)),
        unit: maybe(unit),
      }),
    ),
  },
  said(
    fc.record({
      kind: kind("loss"),
      cause: fc.constantFrom("off", "pulled", "snapped", "foul", "net"),
      species: maybe(name),
    }),
  ),
  said(
    fc.record({ kind: kind("sign"), sort: fc.constantFrom("bite", "missed", "knock", "liner") }),
  ),
  said(fc.record({ kind: kind("drop") })),
  said(
    fc.record({
      kind: kind("feed"),
      times: maybe(whole),
      amountG: maybe(size),
      bait: maybe(name),
      how: maybe(fc.constantFrom("catapult", "pot", "hand")),
    }),
  ),
  said(
    fc.record({
      kind: kind("change"),
      rig: maybe(name),
      depthMm: maybe(size),
      depthByMm: maybe(shift),
      distanceMm: maybe(size),
      distanceByMm: maybe(shift),
      hook: maybe(whole),
      bait: maybe(name),
      baitNote: maybe(name),
      lashMm: maybe(size),
      lashByMm: maybe(shift),
      unit: maybe(unit),
    }),
  ),
  said(fc.record({ kind: kind("net"), number: maybe(whole) })),
  said(
    fc.record({
      kind: kind("conditions"),
      wind: maybe(name),
      sky: maybe(name),
      waterC: maybe(fc.integer({ min: -5, max: 35 })),
      airC: maybe(fc.integer({ min: -30, max: 45 })),
    }),
  ),
  said(fc.record({ kind: kind("note"), text })),
  said(
    fc.record({
      kind: kind("session"),
      act: fc.constantFrom("start", "pause", "resume", "stop"),
    }),
  ),
  said(fc.record({ kind: kind("remind"), everyMs: fc.integer({ min: 0, max: 1e6 }) })),
);

const body: fc.Arbitrary<LogEvent["body"]> = fc.oneof(
  { weight: 8, arbitrary: statement.map((one) => ({ kind: "entry" as const, statement: one })) },
  fc.constant({ kind: "heard" as const }),
  fc.record({ kind: fc.constant("settle" as const), target: name }),
  fc.record({
    kind: fc.constant("withdraw" as const),
    targets: fc.array(name, { maxLength: 3 }),
  }),
  fc.record(
    {
      kind: fc.constant("amend" as const),
      target: name,
      set: fc.record({ weightG: size, species: name }, { requiredKeys: [] }),
      clear: fc.array(name, { maxLength: 2 }),
      at: fc.integer({ min: START, max: START + 1e7 }),
    },
    { requiredKeys: ["kind", "target", "set"] },
  ),
  fc.record({
    kind: fc.constant("plan" as const),
    plan: fc.record({ water: text, peg: text, notes: text }, { requiredKeys: [] }),
  }),
  fc.record({ kind: fc.constant("weigh" as const), net: whole, weightG: size }),
);

const heard = fc.record(
  {
    text: fc.oneof(text, fc.constant("")),
    by: fc.constantFrom("web" as const, "offline" as const, "typed" as const, "touched" as const),
    alternatives: fc.array(text, { maxLength: 3 }),
    confidence: fc.double({ min: 0, max: 1, noNaN: true }).map(Math.abs),
  },
  { requiredKeys: ["text", "by"] },
);

const event = fc.record(
  {
    wait: fc.integer({ min: 0, max: 600_000 }),
    group: name.map((one) => one.slice(0, 64)),
    heard,
    verdict: fc.constantFrom("log" as const, "check" as const, "ignore" as const),
    body,
  },
  { requiredKeys: ["wait", "verdict", "body"] },
);

/** The events of one session on one phone, in order. */
export const day: fc.Arbitrary<LogEvent[]> = fc.array(event, { maxLength: 40 }).map((events) => {
  let at = START;
  return events.map(({ wait, ...rest }, place) => {
    at += wait;
    return { v: 1, id: `e${place}`, session: "s", device: "d", seq: place + 1, at, ...rest };
  });
});
