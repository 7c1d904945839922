/** One session in a few words. */
import type { Digest } from "../../scribe/season/digest.ts";
import { timeOf } from "../../scribe/season/query.ts";
import { formatDuration, formatWeight, type WeightStyle } from "../../ui/format.ts";
import { formatDay } from "../../ui/format-day.ts";
import { sessionsWords } from "../../words/sessions.ts";

const { list } = sessionsWords;

export const dayOf = (digest: Digest): string => formatDay(timeOf(digest));

/** "Osier Lake, peg 17 · Match"; empty where nothing was said of it. */
export function placeOf({ plan: { water, peg, method } }: Digest): string {
  const where = [water, peg && sessionsWords.peg(peg)].filter(Boolean).join(", ");
  return [where, method && sessionsWords.methods[method]].filter(Boolean).join(" · ");
}

export function figuresOf(digest: Digest, weight: WeightStyle): string {
  const { past, fishedMs, count, spokenG } = digest;
  if (!past) return list.notStarted;
  const time = formatDuration(fishedMs);
  if (count === 0) return list.nothingCaught(time);
  return spokenG > 0
    ? list.figures(formatWeight(spokenG, weight), count, time)
    : list.noWeight(count, time);
}
