/** A summary without each fish, for a link that fits a QR code. */
import * as v from "valibot";
import { LOSS_CAUSES, SIGN_SORTS } from "../../../grammar/statement.ts";
import type { Allowed } from "../allowed.ts";
import { allowedOf, type Summary } from "../summary.ts";

const text = v.pipe(v.string(), v.maxLength(10_000));
const name = v.pipe(v.string(), v.minLength(1), v.maxLength(80));
const size = v.pipe(v.number(), v.minValue(0), v.maxValue(1e9));
const count = v.pipe(size, v.integer());
/** Milliseconds since the epoch, up to the year 2100. */
const moment = v.pipe(v.number(), v.minValue(0), v.maxValue(4_102_444_800_000));

const tally = { count, spokenG: size, unweighed: count };
const few = <T extends v.BaseSchema<unknown, unknown, v.BaseIssue<unknown>>>(item: T) =>
  v.pipe(v.array(item), v.maxLength(1000));

const setUp = v.object({
  rig: v.exactOptional(name),
  depthMm: v.exactOptional(size),
  distanceMm: v.exactOptional(size),
  hook: v.exactOptional(count),
  bait: v.exactOptional(name),
  baitNote: v.exactOptional(name),
  lashMm: v.exactOptional(size),
});

const fish = v.object({
  kind: v.literal("fish"),
  species: v.exactOptional(name),
  weightG: v.exactOptional(size),
  lengthMm: v.exactOptional(size),
});

export const briefSchema = v.object({
  form: v.literal("brief"),
  summary: v.object({
    ...tally,
    place: v.object({
      water: v.exactOptional(text),
      peg: v.exactOptional(text),
      method: v.exactOptional(v.picklist(["match", "practice", "coaching"])),
    }),
    startedAt: v.exactOptional(moment),
    endedAt: v.exactOptional(moment),
    fishedMs: size,
    species: few(v.object({ species: v.exactOptional(name), ...tally })),
    best: v.exactOptional(fish),
    losses: few(v.object({ value: v.picklist(LOSS_CAUSES), count })),
    signs: few(v.object({ value: v.picklist(SIGN_SORTS), count })),
    drops: count,
    setUps: few(v.object({ setUp, fishedMs: size, ...tally })),
    nets: few(v.object({ number: count, ...tally, weighedG: v.exactOptional(size) })),
    notes: few(v.object({ at: v.exactOptional(moment), text })),
    toCheck: count,
  }),
});

export type Brief = v.InferOutput<typeof briefSchema>;

export function toBrief(summary: Summary, allowed: Allowed): Brief {
  const { best, nets, ...rest } = allowedOf(summary, allowed);
  const fish = best && {
    kind: best.kind,
    ...(best.species !== undefined && { species: best.species }),
    ...(best.weightG !== undefined && { weightG: best.weightG }),
    ...(best.lengthMm !== undefined && { lengthMm: best.lengthMm }),
  };
  return {
    form: "brief",
    summary: rounded({ ...rest, nets: [...nets], ...(fish && { best: fish }) }),
  };
}

/** Tenths of a gram, of a millimetre and of a millisecond are finer than anyone can tell. */
const rounded = <T>(value: T): T =>
  JSON.parse(JSON.stringify(value), (_, part) =>
    typeof part === "number" ? Math.round(part * 10) / 10 : part,
  );
