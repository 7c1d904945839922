import { compareRates } from "../../analysis/rates/compare.ts";
import { poissonRate } from "../../analysis/rates/garwood.ts";
import { MS_PER_HOUR } from "../../analysis/units.ts";
import type { Digest } from "../../scribe/season/digest.ts";
import { timeOf } from "../../scribe/season/query.ts";
import { formatDuration, formatRate, formatWeight } from "../../ui/format.ts";
import { chartWords } from "../../words/charts.ts";
import { sessionsWords } from "../../words/sessions.ts";
import type { Settings } from "../app.ts";
import { Card, Table } from "../summary/card.tsx";
import { dayOf } from "./words-of.ts";

const words = sessionsWords.compare;

interface BothFiguresProps {
  of: readonly [Digest, Digest];
  settings: Settings;
}

/** The chance from which one day is called faster; as for set-ups. */
const SURE = 0.9;

/** Both sessions in rows of figures, and whether their paces truly differ. */
export function BothFigures({ of, settings }: BothFiguresProps) {
  const write = (grams: number) => formatWeight(grams, settings.weight);
  const row = (name: string, tell: (digest: Digest) => string) => [name, tell(of[0]), tell(of[1])];
  return (
    <Card title={words.what}>
      <Table
        caption={words.caption}
        heads={[words.what, ...of.map(headOf)]}
        rows={[
          row(words.fished, ({ fishedMs }) => formatDuration(fishedMs)),
          row(words.fish, ({ count }) => String(count)),
          row(words.spoken, ({ spokenG }) => write(spokenG)),
          row(words.mean, (digest) => meanOf(digest, write)),
          row(words.rate, rateOf),
          row(words.limits, limitsOf),
          row(words.lost, lostOf),
        ]}
      />
      <p class="verdict">{fasterOf(of)}</p>
    </Card>
  );
}

/** "1: 6 Jun"; the number keeps two sessions of one day apart. */
const headOf = (digest: Digest, place: number): string =>
  `${place + 1}: ${new Date(timeOf(digest)).toLocaleDateString("en-GB", SHORT)}`;

const SHORT = { day: "numeric", month: "short" } as const;

const counted = ({ count, fishedMs }: Digest) => ({ fish: count, hours: fishedMs / MS_PER_HOUR });

function meanOf({ count, unweighed, spokenG }: Digest, write: (grams: number) => string): string {
  const weighed = count - unweighed;
  return weighed > 0 ? write(spokenG / weighed) : words.none;
}

const hourly = (digest: Digest) => {
  const { fish, hours } = counted(digest);
  return poissonRate(fish, hours);
};

function rateOf(digest: Digest): string {
  const rate = hourly(digest);
  return rate.tells ? formatRate(rate.value) : words.few;
}

function limitsOf(digest: Digest): string {
  const { lower, upper } = hourly(digest);
  return Number.isFinite(upper) ? `${formatRate(lower)}–${formatRate(upper)}` : words.nothing;
}

const lostOf = ({ lost }: Digest): string => String(lost);

function fasterOf([one, other]: readonly [Digest, Digest]): string {
  const { tells, chanceFaster } = compareRates(counted(one), counted(other));
  if (!tells) return words.tooFew;
  const chance = Math.max(chanceFaster, 1 - chanceFaster);
  if (chance < SURE) return words.alike;
  return words.faster(dayOf(chanceFaster > 0.5 ? one : other), chartWords.inHundred(chance));
}
