import { sayName } from "../../../grammar/saying/fish.ts";
import type { Summary } from "../../share/summary.ts";
import { Figure } from "../../ui/figure.tsx";
import { formatDuration, formatLength, formatWeight } from "../../ui/format.ts";
import type { Settings } from "../app.ts";

interface FiguresProps {
  summary: Summary;
  settings: Settings;
}

const CAUSES = {
  off: "Came off",
  pulled: "Hook pulled",
  snapped: "Snapped",
  foul: "Foul hooked",
  net: "At the net",
} as const;

/** The whole in two numerals. */
export function Totals({ summary, settings }: FiguresProps) {
  const { count, spokenG, unweighed, fishedMs, toCheck } = summary;
  return (
    <section class="ticket totals" aria-label="In all">
      <p>
        <Figure text={formatWeight(spokenG, settings.weight)} /> as spoken
      </p>
      <p>
        <Figure text={`${count} fish`} /> in {formatDuration(fishedMs)} of fishing
      </p>
      {unweighed > 0 && <p>{unweighed} without a weight, not in the weight above.</p>}
      {toCheck > 0 && (
        <p>
          <a class="button" href="#review">
            {toCheck} still to look at
          </a>
        </p>
      )}
    </section>
  );
}

export function Species({ summary, settings }: FiguresProps) {
  const { species, best } = summary;
  if (species.length === 0) return null;
  return (
    <section class="ticket" aria-labelledby="species">
      <h2 id="species">Fish</h2>
      <table class="table">
        <caption class="for-ears">By species</caption>
        <thead>
          <tr>
            <th scope="col">Species</th>
            <th scope="col">Fish</th>
            <th scope="col">Weight</th>
          </tr>
        </thead>
        <tbody>
          {species.map(({ species: name, count, spokenG, unweighed }) => (
            <tr key={name ?? ""}>
              <th scope="row">{name === undefined ? "Not named" : sayName(name)}</th>
              <td>{count}</td>
              <td>{unweighed === count ? "not said" : formatWeight(spokenG, settings.weight)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {best && <p>Best: {bestWords(best, settings)}</p>}
    </section>
  );
}

function bestWords(best: NonNullable<Summary["best"]>, { weight, length }: Settings): string {
  const { species, weightG, lengthMm } = best;
  return [
    species === undefined ? "not named" : sayName(species),
    weightG !== undefined && formatWeight(weightG, weight, "quarter"),
    lengthMm !== undefined && formatLength(lengthMm, length),
  ]
    .filter(Boolean)
    .join(", ");
}

export function Losses({ summary }: { summary: Summary }) {
  const { losses } = summary;
  const all = losses.reduce((total, { count }) => total + count, 0);
  return (
    <section class="ticket" aria-labelledby="losses">
      <h2 id="losses">Lost</h2>
      {all === 0 ? (
        <p>None was said to be lost.</p>
      ) : (
        <ul class="counts">
          {losses.map(({ value, count }) => (
            <li key={value}>
              <strong>{count}</strong> {CAUSES[value]}
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}
