import type { BestVerdict } from "../../analysis/best.ts";
import type { SeasonBest } from "../../analysis/seasons/over-sessions.ts";
import type { Start } from "../../analysis/seasons/start.ts";
import type { SetUp } from "../../log/session.ts";
import type { Digest } from "../../scribe/season/digest.ts";
import type { Season } from "../../scribe/season/season.ts";
import { hoursText } from "../../share/pictures/hours-text.ts";
import { levelName } from "../../share/pictures/level-names.ts";
import { formatRate } from "../../ui/format.ts";
import { useAnswer } from "../../ui/use-answer.ts";
import { chartWords } from "../../words/charts.ts";
import { sessionsWords } from "../../words/sessions.ts";
import type { Settings } from "../app.ts";

const words = sessionsWords.next;

const PARTS = ["depth", "rig", "bait"] as const;
type Part = (typeof PARTS)[number];

interface WhereToStartProps {
  season: Season;
  digests: readonly Digest[];
  /** The water it was fished at is the one asked about. */
  last: Digest;
  settings: Settings;
  onStart: (setUp: SetUp) => void;
}

/** Depth, rig and bait to begin with, and why; what is not clear is said to be unclear. */
export function WhereToStart({ season, digests, last, settings, onStart }: WhereToStartProps) {
  const water = last.plan.water ?? undefined;
  const start = useAnswer(() => season.start(water), [digests, water]);
  if (start.is !== "there" || start.value.sessions === 0) return null;
  const { value } = start;
  const clear = PARTS.filter((part) => value[part].verdict === "clear");
  const names = clear.map((part) => nameOf(part, value[part], settings)).join(", ");
  return (
    <section class="stack" aria-label={value.water ? words.where(value.water) : words.anywhere}>
      <h3>{value.water ? words.where(value.water) : words.anywhere}</h3>
      <ul class="in-words">
        {PARTS.map((part) => (
          <li key={part}>{reasonFor(part, value[part], settings)}</li>
        ))}
      </ul>
      <p>{restsOn(value)}</p>
      {clear.length > 0 && (
        <>
          <button type="button" class="button" onClick={() => onStart(setUpOf(clear, value))}>
            {words.with(names)}
          </button>
          <p>{words.caution}</p>
        </>
      )}
    </section>
  );
}

const REASONS: Readonly<Record<Exclude<BestVerdict, "clear" | "alone">, (what: string) => string>> =
  { close: words.close, "too-few": words.tooFew };

function reasonFor(part: Part, best: SeasonBest, settings: Settings): string {
  const [leader] = best.ranked;
  const what = chartWords.rates.factors[part];
  if (!leader || best.verdict === "close" || best.verdict === "too-few") {
    return REASONS[best.verdict === "close" ? "close" : "too-few"](what);
  }
  const name = nameOf(part, best, settings);
  const basis = words.basis(hoursText(leader.hours), leader.sessions);
  if (best.verdict === "alone" || !leader.fishPerHour.tells) return words.alone(name, basis);
  const { value, lower, upper } = leader.fishPerHour;
  const [rate, least, most] = [value, lower, upper].map(formatRate) as [string, string, string];
  return words.best(name, rate, least, most, chartWords.inHundred(leader.chanceBest), basis);
}

function nameOf(part: Part, { ranked: [leader] }: SeasonBest, { length }: Settings): string {
  return leader ? levelName(part, leader.level, length) : "";
}

const restsOn = ({ water, sessions, hours }: Start): string =>
  (water === undefined ? words.restsAll : words.rests)(sessions, hoursText(hours));

function setUpOf(parts: readonly Part[], start: Start): SetUp {
  const setUp: SetUp = {};
  for (const part of parts) {
    const level = start[part].ranked[0]?.level;
    if (level === undefined) continue;
    if (part === "depth") setUp.depthMm = Number(level);
    else setUp[part] = String(level);
  }
  return setUp;
}
