/** Every phrase, in the order in which they win where two fit equally well. */
import { correctedFoul, correctedSize, correction } from "./amend.ts";
import { questions } from "./ask.ts";
import { deeperOrShallower, depth, depthBy } from "./change-depth.ts";
import { distance, distanceBy } from "./change-distance.ts";
import { bait, bareBait, hook } from "./change-hook.ts";
import { lash, lashBy } from "./change-lash.ts";
import { rig } from "./change-rig.ts";
import { airTemperature, sky, waterTemperature, wind } from "./conditions.ts";
import { drop } from "./drop.ts";
import { fedBy, fedMeasure, feeding } from "./feed.ts";
import { fish, oneMore, weightOnly } from "./fish.ts";
import { hookPulled, lost, lostFoul, lostSeveral, snapped } from "./loss.ts";
import { net } from "./net.ts";
import { note } from "./note.ts";
import type { Phrase } from "./phrase.ts";
import { noNudge, nudge } from "./remind.ts";
import { pause, resume, start, stop } from "./session.ts";
import { bite, knock, liner, missed } from "./sign.ts";
import { fullAnswers, shortAnswers, tonesOnly } from "./talkback.ts";
import { withdraw } from "./withdraw.ts";

export const PHRASES: readonly Phrase[] = [
  note,
  withdraw,
  correction,
  start,
  pause,
  resume,
  stop,
  ...questions,
  nudge,
  noNudge,
  tonesOnly,
  shortAnswers,
  fullAnswers,
  lostFoul,
  hookPulled,
  snapped,
  lost,
  lostSeveral,
  lash,
  lashBy,
  depth,
  depthBy,
  distance,
  distanceBy,
  deeperOrShallower,
  rig,
  hook,
  net,
  fedBy,
  fedMeasure,
  feeding,
  bait,
  fish,
  oneMore,
  bite,
  missed,
  knock,
  liner,
  drop,
  wind,
  sky,
  waterTemperature,
  airTemperature,
  weightOnly,
  bareBait,
  correctedSize,
  correctedFoul,
];
