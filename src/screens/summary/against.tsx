import type { Bias } from "../../analysis/weights/bias.ts";
import type { Session } from "../../log/session.ts";
import type { Summary } from "../../share/summary.ts";
import { setUpText } from "../../share/summary-text.ts";
import { formatDuration, formatWeight } from "../../ui/format.ts";
import { summaryWords } from "../../words/summary.ts";
import type { Settings } from "../app.ts";
import { WhatScalesSay } from "../what-scales-say.tsx";
import { Card, Table } from "./card.tsx";

interface AgainstProps {
  summary: Summary;
  settings: Settings;
}

/** Shorter than this without a fish, a set-up was only passed through while others were named. */
const A_WHILE_MS = 60_000;

/** What was fished with, for how long, and what came of it. */
export function SetUpsUsed({ summary, settings }: AgainstProps) {
  const words = summaryWords.setUps;
  const setUps = summary.setUps.filter(
    ({ count, fishedMs }) => count > 0 || fishedMs >= A_WHILE_MS,
  );
  if (setUps.length === 0) return null;
  return (
    <Card title={words.title}>
      <ul class="stack">
        {setUps.map((one, place) => (
          <li class="tried" key={place}>
            <p>{setUpText(one.setUp, settings)}</p>
            <p>
              <strong>{words.fish(one.count)}</strong>
              {words.came(
                one.spokenG > 0 ? formatWeight(one.spokenG, settings.weight) : "",
                formatDuration(one.fishedMs),
              )}
            </p>
          </li>
        ))}
      </ul>
      <p>{words.caution}</p>
    </Card>
  );
}

interface NetsProps extends AgainstProps {
  session: Session;
  bias: Bias;
}

/** What was said of each net against what the scales said, and what that says of the angler. */
export function Nets({ summary, settings, session, bias }: NetsProps) {
  const words = summaryWords.nets;
  const { weight } = settings;
  return (
    <Card title={words.title}>
      <Table
        caption={words.caption}
        heads={[words.net, words.fish, words.spoken, words.scales]}
        rows={summary.nets.map(({ number, count, spokenG, weighedG }) => [
          String(number),
          String(count),
          formatWeight(spokenG, weight),
          weighedG === undefined ? words.notYet : formatWeight(weighedG, weight),
        ])}
      />
      <WhatScalesSay session={session} bias={bias} styles={settings} />
      {summary.nets.some(({ weighedG }) => weighedG === undefined) && (
        <p>
          <a class="button" href="#review">
            {words.enter}
          </a>
        </p>
      )}
    </Card>
  );
}
