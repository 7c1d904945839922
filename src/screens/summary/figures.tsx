import { sayName } from "../../../grammar/saying/fish.ts";
import type { Estimate } from "../../analysis/estimate.ts";
import type { Summary } from "../../share/summary.ts";
import { Figure } from "../../ui/figure.tsx";
import { formatDuration, formatLength, formatWeight, formatWeightLimits } from "../../ui/format.ts";
import { summaryWords } from "../../words/summary.ts";
import type { Settings } from "../app.ts";
import { Card, Table } from "./card.tsx";

interface FiguresProps {
  summary: Summary;
  settings: Settings;
}

/** The whole in two numerals. @param bag grams in truth, as far as they can be told */
export function Totals({ summary, settings, bag }: FiguresProps & { bag: Estimate }) {
  const { count, spokenG, unweighed, fishedMs, toCheck } = summary;
  const write = (grams: number) => formatWeight(grams, settings.weight);
  const limits = formatWeightLimits(bag, settings.weight);
  const isDoubtful = count > 0 && bag.upper > bag.lower && Number.isFinite(bag.upper);
  return (
    <section class="ticket totals" aria-label={summaryWords.inAll}>
      <p>
        <Figure text={write(spokenG)} /> {summaryWords.asSpoken}
      </p>
      {isDoubtful && <p>{summaryWords.likely(limits.lower, limits.upper)}</p>}
      {count > 0 && bag.tells && bag.upper === bag.lower && (
        <p>
          <strong>{write(bag.value)}</strong> {summaryWords.byScales}
        </p>
      )}
      <p>
        <Figure text={summaryWords.fish(count)} /> {summaryWords.inTime(formatDuration(fishedMs))}
      </p>
      {unweighed > 0 && <p>{summaryWords.unweighed(unweighed)}</p>}
      {toCheck > 0 && (
        <p>
          <a class="button" href="#review">
            {summaryWords.toLookAt(toCheck)}
          </a>
        </p>
      )}
    </section>
  );
}

export function Species({ summary, settings }: FiguresProps) {
  const words = summaryWords.species;
  const { species, best } = summary;
  if (species.length === 0) return null;
  return (
    <Card title={words.title}>
      <Table
        caption={words.caption}
        heads={[words.name, words.fish, words.weight]}
        rows={species.map(({ species: name, count, spokenG, unweighed }) => [
          name === undefined ? words.notNamed : sayName(name),
          String(count),
          unweighed === count ? words.notSaid : formatWeight(spokenG, settings.weight),
        ])}
      />
      {best && <p>{words.best(bestWords(best, settings))}</p>}
    </Card>
  );
}

function bestWords(best: NonNullable<Summary["best"]>, { weight, length }: Settings): string {
  const { species, weightG, lengthMm } = best;
  return [
    species === undefined ? summaryWords.species.notNamed.toLowerCase() : sayName(species),
    weightG !== undefined && formatWeight(weightG, weight, "quarter"),
    lengthMm !== undefined && formatLength(lengthMm, length),
  ]
    .filter(Boolean)
    .join(", ");
}

export function Losses({ summary: { losses } }: { summary: Summary }) {
  const words = summaryWords.lost;
  return (
    <Card title={words.title}>
      {losses.length === 0 ? (
        <p>{words.none}</p>
      ) : (
        <ul class="counts">
          {losses.map(({ value, count }) => (
            <li key={value}>
              <strong>{count}</strong> {words.causes[value]}
            </li>
          ))}
        </ul>
      )}
    </Card>
  );
}
