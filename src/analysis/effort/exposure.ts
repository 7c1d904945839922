/** How much fishing each level of a factor got, and what came of it. */
import type { Entry, Session, SetUp } from "../../log/session.ts";
import { groupBy } from "../group.ts";
import { MM_PER_METRE, MS_PER_HOUR } from "../units.ts";
import { type Spell, spellsOf } from "./spells.ts";

export const FACTORS = ["rig", "depth", "distance", "bait", "hook", "hour"] as const;
export type Factor = (typeof FACTORS)[number];

/**
 * A rig's or bait's name, the middle of a depth or distance band in millimetres, a hook's size, or
 * the hour of the session counted from 1; undefined where the set-up did not say.
 */
export type Level = string | number | undefined;

export interface Exposure {
  level: Level;
  /** Hours fished, pauses out. */
  hours: number;
  drops: number;
  /** Fish landed, and fish lost. */
  fish: number;
  lost: number;
  /** The entries that make up the count. */
  entries: readonly Entry[];
}

/**
 * Widths of the bands, in millimetres. Rigs are told apart by a few inches in depth (common practice,
 * no source) and poles by the section, near a metre; a finer band only scatters the fish.
 */
export const DEPTH_BAND_MM = 100;
export const DISTANCE_BAND_MM = MM_PER_METRE;

const band = (mm: number | undefined, width: number): number | undefined =>
  mm === undefined ? undefined : Math.round(mm / width) * width;

/** The level of a factor that a set-up alone decides. */
export function setUpLevel(factor: Exclude<Factor, "hour">, setUp: SetUp): Level {
  if (factor === "depth") return band(setUp.depthMm, DEPTH_BAND_MM);
  if (factor === "distance") return band(setUp.distanceMm, DISTANCE_BAND_MM);
  return setUp[factor];
}

function levelOf(factor: Factor, { setUp, stretches, entries }: Spell, startedAt: number): Level {
  if (factor !== "hour") return setUpLevel(factor, setUp);
  const at = stretches[0]?.from ?? entries[0]?.at ?? startedAt;
  return Math.floor(Math.max(0, at - startedAt) / MS_PER_HOUR) + 1;
}

/** Some forty days: a session left open for longer, or begun in 1970 by a wrong clock, has no more of them. */
const MOST_HOURS = 1000;

/** The full hours of a session after its start, up to `now`, as far as they are told apart. */
function hourMarks(session: Session, now: number): number[] {
  const { startedAt } = session;
  if (startedAt === undefined) return [];
  const hours = Math.floor(((session.endedAt ?? now) - startedAt) / MS_PER_HOUR);
  return Array.from(
    { length: Math.min(MOST_HOURS, Math.max(0, hours)) },
    (_, hour) => startedAt + (hour + 1) * MS_PER_HOUR,
  );
}

/**
 * Time fished, drops made and fish taken at each level of a factor, in order of first use. Sums over
 * levels are the session's sums. Needs a started session; without one there are no levels.
 */
export function exposuresBy(factor: Factor, session: Session, now: number): Exposure[] {
  const spells = spellsOf(session, now, factor === "hour" ? hourMarks(session, now) : []);
  const startedAt = session.startedAt ?? now;
  const byLevel = groupBy(spells, (spell) => levelOf(factor, spell, startedAt));
  return [...byLevel].map(([level, ofLevel]) => exposureOf(level, ofLevel));
}

/** What the spells come to together. */
export function exposureOf(level: Level, spells: readonly Spell[]): Exposure {
  const entries = spells.flatMap((spell) => spell.entries);
  const fishedMs = spells.reduce((total, spell) => total + spell.fishedMs, 0);
  const ofKind = (kind: "drop" | "loss") =>
    entries.filter(({ statement }) => statement.kind === kind).length;
  return {
    level,
    hours: fishedMs / MS_PER_HOUR,
    drops: ofKind("drop"),
    fish: countFish(entries),
    lost: ofKind("loss"),
    entries,
  };
}

/** Fish landed; an entry may stand for several. */
export const countFish = (entries: readonly Entry[]): number =>
  entries.reduce(
    (total, { statement }) => total + (statement.kind === "fish" ? (statement.count ?? 1) : 0),
    0,
  );
