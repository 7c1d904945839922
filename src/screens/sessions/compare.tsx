import { useSignal } from "@preact/signals";
import { useEffect, useRef } from "preact/hooks";
import type { Factor } from "../../analysis/effort/exposure.ts";
import { FACTORS } from "../../analysis/effort/exposure.ts";
import type { Session } from "../../log/session.ts";
import type { Digest } from "../../scribe/season/digest.ts";
import type { Season } from "../../scribe/season/season.ts";
import { sessionRates, topRate } from "../../share/pictures/rates-of.ts";
import {
  RatesPicture,
  rateSentences,
  verdictSentence,
} from "../../share/pictures/rates-picture.tsx";
import { useAnswer } from "../../ui/use-answer.ts";
import { sessionsWords } from "../../words/sessions.ts";
import type { App, Settings } from "../app.ts";
import { FactorChoice } from "../factor-choice.tsx";
import { Card, InWords } from "../summary/card.tsx";
import { BothClimbs } from "./both-climbs.tsx";
import { BothFigures } from "./both-figures.tsx";
import { dayOf, placeOf } from "./words-of.ts";

const words = sessionsWords.compare;

type Both<T> = readonly [T, T];

interface CompareProps {
  app: App;
  season: Season;
  of: Both<Digest>;
  onBack: () => void;
}

/** Two sessions in figures and pictures, on one scale. */
export function Compare({ app, season, of, onBack }: CompareProps) {
  const top = useRef<HTMLHeadingElement>(null);
  useEffect(() => top.current?.focus(), []);
  const [one, other] = of;
  const sessions = useAnswer(
    () => Promise.all([season.session(one.id), season.session(other.id)] as const),
    [season, one.id, other.id],
  );
  return (
    <>
      <h1 ref={top} tabIndex={-1}>
        {words.title}
      </h1>
      <div>
        <button type="button" class="button" onClick={onBack}>
          {words.back}
        </button>
      </div>
      <BothFigures of={of} settings={app.settings.value} />
      {sessions.is === "failed" && <p class="warn">{sessions.why}</p>}
      {sessions.is === "there" && (
        <Pictures of={of} sessions={sessions.value} settings={app.settings.value} />
      )}
    </>
  );
}

interface PicturesProps {
  of: Both<Digest>;
  sessions: Both<Session>;
  settings: Settings;
}

function Pictures({ of, sessions, settings }: PicturesProps) {
  const factor = useSignal<Factor>("depth");
  const rates = sessions.map((session, place) =>
    sessionRates(factor.value, session, of[place]?.lastAt ?? 0),
  );
  const end = topRate(rates.flatMap(({ levels }) => levels));
  return (
    <>
      <BothClimbs of={of} sessions={sessions} settings={settings} />
      <Card title={words.worked}>
        <FactorChoice
          label={words.by}
          factors={FACTORS}
          value={factor.value}
          onChange={(value) => {
            factor.value = value;
          }}
        />
        <div class="both">
          {rates.map((each, place) => (
            <div class="stack" key={of[place]?.id}>
              <h3>{of[place] && nameOf(of[place])}</h3>
              <p>{verdictSentence(each, settings)}</p>
              {each.levels.length > 0 && <RatesPicture of={each} styles={settings} top={end} />}
              <InWords sentences={rateSentences(each, settings)} />
            </div>
          ))}
        </div>
      </Card>
    </>
  );
}

const nameOf = (digest: Digest): string =>
  [dayOf(digest), placeOf(digest)].filter(Boolean).join(", ");
