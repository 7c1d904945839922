import { sum } from "../../analysis/estimate.ts";
import { hoursText } from "../../share/pictures/hours-text.ts";
import { levelName } from "../../share/pictures/level-names.ts";
import { formatRate } from "../../ui/format.ts";
import { boardWords } from "../../words/board.ts";
import { chartWords } from "../../words/charts.ts";
import type { BoardView } from "../app/board.ts";
import type { Settings } from "../app.ts";
import { Card, InWords } from "../summary/card.tsx";

const words = boardWords.pooled;

const FACTORS = ["depth", "bait", "rig"] as const;
type Factor = (typeof FACTORS)[number];

type Pooled = BoardView["pooled"][Factor];
type Contender = Pooled["ranked"][number];

interface OverAllProps {
  pooled: BoardView["pooled"];
  settings: Settings;
}

/** What all pegs together say, a sentence each. */
export function OverAll({ pooled, settings }: OverAllProps) {
  return (
    <Card title={words.title}>
      <InWords sentences={FACTORS.map((factor) => pooledText(factor, pooled[factor], settings))} />
      <p>{words.shrunk}</p>
    </Card>
  );
}

/** "Depth: 60 cm is best with 4.2 fish an hour (3.1 to 5.4), over 9 h on 12 pegs. 91 in 100 that it is." */
export function pooledText(factor: Factor, { verdict, ranked }: Pooled, settings: Settings) {
  const what = chartWords.rates.factors[factor];
  const [first, second] = ranked;
  if (!first) return words.none(what);
  const name = ({ level }: Contender) => levelName(factor, level, settings.length);
  if (verdict === "too-few") {
    return words.tooFew(what, hoursText(sum(ranked.map(({ hours }) => hours))));
  }
  if (verdict === "alone" || !second) {
    return words.alone(what, name(first), rateText(first), basisText(first));
  }
  if (verdict === "close") {
    const told = (one: Contender) => words.one(name(one), rateText(one), basisText(one));
    return words.close(what, told(first), told(second));
  }
  const chance = chartWords.inHundred(first.chanceBest);
  return words.best(what, name(first), rateText(first), chance, basisText(first));
}

function rateText({ fishPerHour }: Contender): string {
  const [lower, upper] = [fishPerHour.lower, fishPerHour.upper].map(formatRate);
  if (lower === undefined || upper === undefined || !fishPerHour.tells) {
    return words.upTo(upper ?? "");
  }
  return words.rate(formatRate(fishPerHour.value), lower, upper);
}

const basisText = ({ hours, sessions }: Contender): string =>
  words.basis(hoursText(hours), sessions);
