import type { Summary } from "../../share/summary.ts";
import { setUpText } from "../../share/summary-text.ts";
import { formatDuration, formatWeight } from "../../ui/format.ts";
import type { Settings } from "../app.ts";

interface AgainstProps {
  summary: Summary;
  settings: Settings;
}

/** Shorter than this without a fish, a set-up was only passed through while others were named. */
const A_WHILE_MS = 60_000;

/** What was fished with, for how long, and what came of it. */
export function SetUpsUsed({ summary, settings }: AgainstProps) {
  const setUps = summary.setUps.filter(
    ({ count, fishedMs }) => count > 0 || fishedMs >= A_WHILE_MS,
  );
  if (setUps.length === 0) return null;
  return (
    <section class="ticket" aria-labelledby="set-ups">
      <h2 id="set-ups">Set-ups</h2>
      <ul class="stack">
        {setUps.map((one, place) => (
          <li class="tried" key={place}>
            <p>{setUpText(one.setUp, settings)}</p>
            <p>
              <strong>{one.count} fish</strong>
              {one.spokenG > 0 && `, ${formatWeight(one.spokenG, settings.weight)}`} in{" "}
              {formatDuration(one.fishedMs)}
            </p>
          </li>
        ))}
      </ul>
      <p>Few fish say little about a set-up: what differs by one or two is mostly luck.</p>
    </section>
  );
}

/** What was said of each net against what the scales said. */
export function Nets({ summary, settings }: AgainstProps) {
  const { weight } = settings;
  return (
    <section class="ticket" aria-labelledby="nets">
      <h2 id="nets">Nets</h2>
      <table class="table">
        <caption class="for-ears">Spoken against weighed</caption>
        <thead>
          <tr>
            <th scope="col">Net</th>
            <th scope="col">Fish</th>
            <th scope="col">Spoken</th>
            <th scope="col">Scales</th>
          </tr>
        </thead>
        <tbody>
          {summary.nets.map(({ number, count, spokenG, weighedG }) => (
            <tr key={number}>
              <th scope="row">{number}</th>
              <td>{count}</td>
              <td>{formatWeight(spokenG, weight)}</td>
              <td>{weighedG === undefined ? "not yet" : formatWeight(weighedG, weight)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {summary.nets.some(({ weighedG }) => weighedG === undefined) && (
        <p>
          <a class="button" href="#review">
            Enter what the scales said
          </a>
        </p>
      )}
    </section>
  );
}
