/** When, in one life of the browser, it is killed; drawn from a seed. */
import type { Random } from "../../simulation/random.ts";

/**
 * `loading`: so long after the app was asked for; `time`: so long after the stream began; `said`: so
 * long after that phrase was begun; `told`: at the very moment the page tells of that tone; `frozen`:
 * as `said`, but at first only the process that stores stops, so that what is confirmed without it
 * has time to be told of.
 */
export type Moment =
  | { when: "loading"; ms: number }
  | { when: "time"; ms: number }
  | { when: "said" | "frozen"; phrase: number; ms: number }
  | { when: "told"; phrase: number };

export interface Life {
  moment: Moment;
  /** Whether the kill also leaves a write cut off, which by itself it seldom does. */
  isTorn: boolean;
  /** Whether another session is begun first. */
  isAnother: boolean;
  /** Milliseconds before each phrase. */
  gapsMs: number[];
}

const MOMENTS = ["loading", "time", "said", "frozen", "frozen", "told", "told"] as const;

/** In how many lives a write is left cut off. */
const TORN = 0.05;
/** In how many lives another session is begun. */
const ANOTHER = 0.25;
/** As long as loading the app takes, about. */
const LOADING_MS = 1500;
/** Longer than most transactions take. */
const STORING_MS = 25;
/** An angler who is quick, and recognisers that deliver several phrases at once. */
const LONGEST_GAP_MS = 60;

/** @param phrases how many are said in this life at most */
export function drawLife(phrases: number, random: Random): Life {
  const isBurst = random.happens(0.3);
  const gapsMs = Array.from({ length: phrases }, () =>
    isBurst ? 0 : Math.floor(random.between(0, LONGEST_GAP_MS)),
  );
  const moment = drawMoment(phrases, random);
  return { gapsMs, moment, isAnother: random.happens(ANOTHER), isTorn: random.happens(TORN) };
}

function drawMoment(phrases: number, random: Random): Moment {
  const phrase = Math.floor(random.between(1, phrases + 1));
  const when = random.pick(MOMENTS);
  switch (when) {
    case "loading":
      return { when, ms: random.between(0, LOADING_MS) };
    case "time":
      return { when, ms: random.between(0, phrases * LONGEST_GAP_MS) };
    case "said":
    case "frozen":
      return { when, phrase, ms: random.between(0, STORING_MS) };
    default:
      return { when: "told", phrase };
  }
}
