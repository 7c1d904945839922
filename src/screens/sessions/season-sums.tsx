import { useSignal } from "@preact/signals";
import { FACTORS, type Factor } from "../../analysis/effort/exposure.ts";
import type { Digest } from "../../scribe/season/digest.ts";
import type { Query, SeasonSums } from "../../scribe/season/query.ts";
import type { Season } from "../../scribe/season/season.ts";
import { hoursText } from "../../share/pictures/hours-text.ts";
import { seasonRates } from "../../share/pictures/rates-of.ts";
import { useAnswer } from "../../ui/use-answer.ts";
import { chartWords } from "../../words/charts.ts";
import { sessionsWords } from "../../words/sessions.ts";
import type { Settings } from "../app.ts";
import { FactorChoice } from "../factor-choice.tsx";
import { RatesInFull } from "../rates-in-full.tsx";
import { Card } from "../summary/card.tsx";

const words = sessionsWords.sums;

interface SeasonSumsProps {
  season: Season;
  /** The sums are made again when these change. */
  digests: readonly Digest[];
  query: Query;
  settings: Settings;
}

/** Which depth, rig, bait, hour … caught best over the sessions asked for. */
export function SeasonSumsCard({ season, digests, query, settings }: SeasonSumsProps) {
  const factor = useSignal<Factor>("depth");
  const sums = useAnswer(() => season.sums(factor.value, query), [factor.value, query, digests]);
  return (
    <Card title={words.title}>
      <FactorChoice
        label={words.by}
        factors={FACTORS}
        value={factor.value}
        onChange={(value) => {
          factor.value = value;
        }}
      />
      {sums.is === "waiting" && <p>{words.adding}</p>}
      {sums.is === "failed" && <p class="warn">{sums.why}</p>}
      {sums.is === "there" && <Sums sums={sums.value} settings={settings} />}
    </Card>
  );
}

function Sums({ sums, settings }: { sums: SeasonSums; settings: Settings }) {
  const rates = seasonRates(sums.factor, sums.best);
  return (
    <>
      <p>{words.over(sums.sessions, hoursText(sums.hours))}</p>
      <RatesInFull of={rates} styles={settings} />
      {rates.more > 0 && <p>{chartWords.rates.more(rates.more)}</p>}
      {rates.levels.length > 1 && <p>{words.shrunk}</p>}
    </>
  );
}
