/** The depth of a bite from the time since the rig went in. */
import type { Interval } from "../estimate.ts";

export interface BiteDepth extends Interval {
  /** Millimetres below the surface; `lower` and `upper` likewise. */
  depthMm: number;
  /** Whether the bait may have reached its full depth: then the bite may have come there. */
  settled: boolean;
}

/** A spoken "going in" or "bite" lags or leads by about this many seconds either way; our own choice. */
const SPOKEN_DOUBT_S = 1;

/** Fall speeds by formula or by one timing are taken to be this share off either way; our own choice. */
const SPEED_DOUBT = 0.2;

const MM_PER_M = 1000;

/**
 * Depth of a bait that has been falling for `seconds` (≥ 0) at `speed` m/s (≥ 0) on a rig set at
 * `rigDepthMm` (> 0), with limits for the doubt in time and speed. It never lies below the rig.
 */
export function biteDepth(seconds: number, speed: number, rigDepthMm: number): BiteDepth {
  const after = (time: number, pace: number) =>
    Math.min(rigDepthMm, Math.max(0, time) * pace * MM_PER_M);
  const upper = after(seconds + SPOKEN_DOUBT_S, speed * (1 + SPEED_DOUBT));
  return {
    depthMm: after(seconds, speed),
    lower: after(seconds - SPOKEN_DOUBT_S, speed * (1 - SPEED_DOUBT)),
    upper,
    settled: upper === rigDepthMm,
  };
}

/** Fall speed in m/s from timing one over a known depth; undefined if either is not above 0. */
export const timedSpeed = (depthMm: number, seconds: number): number | undefined =>
  depthMm > 0 && seconds > 0 ? depthMm / MM_PER_M / seconds : undefined;
