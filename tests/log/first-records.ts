/**
 * Records as the first version of the schema let them be: every kind with every field, and each limit
 * reached. Written by hand and of no type, so that no later code can change them.
 */
const at = Date.UTC(2026, 4, 2, 10, 0, 0);
const name = "n".repeat(80);
const text = "t".repeat(2000);
const line = "l".repeat(10_000);
const id = "i".repeat(64);

const amendable = {
  species: name,
  weightG: 0.5,
  lengthMm: 0.5,
  count: 10_000,
  approx: true,
  foul: true,
  rig: name,
  depthMm: 0.5,
  depthByMm: -300,
  distanceMm: 0.5,
  distanceByMm: -300,
  hook: 10_000,
  bait: name,
  baitNote: name,
  lashMm: 0.5,
  lashByMm: -50,
  cause: "off",
  number: 10_000,
};

const inUnits = [
  ...["lb", "oz", "kg", "g"].map((weight) => ({ weight })),
  ...["in", "ft", "mm", "cm", "m"].map((length) => ({ length })),
];

const statements = [
  { kind: "fish" },
  {
    kind: "fish",
    species: name,
    weightG: 0.5,
    lengthMm: 0.5,
    count: 10_000,
    approx: true,
    foul: true,
  },
  ...inUnits.map((unit) => ({ kind: "fish", unit })),
  ...["off", "pulled", "snapped", "foul", "net"].map((cause) => ({ kind: "loss", cause })),
  { kind: "loss", cause: "off", species: name },
  ...["bite", "missed", "knock", "liner"].map((sort) => ({ kind: "sign", sort })),
  { kind: "drop" },
  { kind: "feed" },
  ...["catapult", "pot", "hand"].map((how) => ({ kind: "feed", how })),
  { kind: "feed", times: 10_000, amountG: 0.5, bait: name, baitNote: name, unit: { weight: "g" } },
  { kind: "change" },
  { kind: "change", rig: name, depthMm: 0.5, distanceMm: 0.5, hook: 10_000, lashMm: 0.5 },
  { kind: "change", bait: name, baitNote: name, depthByMm: -1, distanceByMm: -1, lashByMm: -1 },
  { kind: "net" },
  { kind: "net", number: 10_000 },
  { kind: "conditions" },
  { kind: "conditions", wind: name, sky: name, waterC: -1.5, airC: -40 },
  { kind: "note", text },
  ...["start", "pause", "resume", "stop"].map((act) => ({ kind: "session", act })),
  { kind: "remind", everyMs: 0 },
  { kind: "remind", everyMs: 180_000, about: text },
];

const none = {
  water: null,
  peg: null,
  method: null,
  endsAt: null,
  targetG: null,
  netLimitG: null,
  lashLimitMm: null,
  baitLimitsG: null,
  waterDepthMm: null,
  notes: null,
};

const plans = [
  {},
  none,
  ...["match", "practice", "coaching"].map((method) => ({ method })),
  {
    water: line,
    peg: line,
    endsAt: -1,
    targetG: 0.5,
    netLimitG: 0.5,
    lashLimitMm: 0.5,
    baitLimitsG: { [name]: 0.5 },
    waterDepthMm: 0.5,
    ownSpecies: [{ name, spoken: [name] }],
    ownBaits: [{ name, spoken: [] }],
    ownRigs: [],
    notes: line,
  },
];

const bodies = [
  ...statements.map((statement) => ({ kind: "entry", statement })),
  { kind: "heard" },
  { kind: "amend", target: id, set: {} },
  { kind: "amend", target: id, set: amendable, clear: ["count", line], at: -1 },
  ...statements.map((statement) => ({ kind: "replace", target: id, statement })),
  { kind: "withdraw", targets: [] },
  { kind: "withdraw", targets: [id, "gone"] },
  { kind: "settle", target: id },
  ...plans.map((plan) => ({ kind: "plan", plan })),
  { kind: "weigh", net: 0, weightG: 0 },
];

const said = [
  ...["web", "offline", "typed", "touched"].map((by) => ({ text: "", by })),
  { text: line, alternatives: [line, ""], confidence: -1, by: "web" },
];

const written = [
  ...bodies.map((body) => ({ body })),
  ...said.map((heard) => ({ body: { kind: "heard" }, heard })),
  ...["log", "check", "ignore"].map((verdict) => ({ body: { kind: "heard" }, verdict })),
  { body: { kind: "entry", statement: { kind: "drop" } }, id, device: id, group: id },
  { body: { kind: "entry", statement: { kind: "drop" } }, at: 0.5 },
];

export const FIRST_RECORDS: readonly object[] = written.map((one, n) => ({
  v: 1,
  id: `first-${n + 1}`,
  session: "saturday",
  device: "phone",
  seq: n + 1,
  at: at + n,
  verdict: "log",
  ...one,
}));

/** A log as the first version exported it. */
export const FIRST_EXPORT = {
  format: "pegscribe-log",
  version: 1,
  exportedAt: at,
  events: FIRST_RECORDS,
  damaged: [{ record: { id: 7 }, fault: "id" }],
};
