/** How the eyes and the voice are served; kept on this device, not in the log. */
import * as v from "valibot";
import { ALL_WARNINGS, warningsSchema } from "./warnings.ts";

const settingsSchema = v.object({
  weight: v.picklist(["lb-oz", "kg"]),
  length: v.picklist(["cm", "in"]),
  talkback: v.picklist(["tones", "short", "full"]),
  /** With a call word, only what starts with it counts. */
  callWord: v.optional(v.pipe(v.string(), v.minLength(1), v.maxLength(40))),
  /** The hand that touches the phone: what is touched most lies on its side. */
  hand: v.optional(v.picklist(["right", "left"]), "right"),
  /** Light colours are the easier ones to read in the sun, whatever the rest of the phone does. */
  lights: v.optional(v.picklist(["system", "light", "dark"]), "system"),
  /** Which ears listen: the browser's, those inside the app, or whichever is better at the time. */
  ears: v.optional(v.picklist(["either", "web", "offline"]), "either"),
  /** The sound of what is in doubt is kept with it. */
  memos: v.optional(v.boolean(), false),
  /** What a drill found to suit the angler's voice; absent for the usual ways. */
  voice: v.optional(
    v.object({
      accent: v.picklist(["dictionary", "southern", "northern"]),
      warp: v.optional(v.pipe(v.number(), v.minValue(0.5), v.maxValue(2)), 1),
      shift: v.pipe(v.number(), v.minValue(-10), v.maxValue(10)),
    }),
  ),
  warnings: v.optional(warningsSchema, ALL_WARNINGS),
});

export type Settings = v.InferOutput<typeof settingsSchema>;

export const DEFAULT_SETTINGS: Settings = {
  weight: "lb-oz",
  length: "cm",
  talkback: "short",
  callWord: undefined,
  hand: "right",
  lights: "system",
  ears: "either",
  memos: false,
  warnings: ALL_WARNINGS,
};

/**
 * Another phone's settings for this one; its own where they make no sense. Where sound goes and
 * whether it is kept is chosen on each phone for itself, and by nobody's file.
 */
export function settingsOfAnother(kept: unknown, own: Settings): Settings {
  const read = v.safeParse(settingsSchema, kept);
  return read.success ? { ...read.output, ears: own.ears, memos: own.memos } : own;
}

/** The settings as they were kept; the usual ones where there are none or they make no sense. */
export function readSettings(kept: string | undefined): Settings {
  try {
    return v.parse(settingsSchema, JSON.parse(kept ?? "null"));
  } catch {
    return DEFAULT_SETTINGS;
  }
}
