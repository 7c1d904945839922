import { biasFrom, weighedNets } from "../../analysis/weights/bias.ts";
import type { Session } from "../../log/session.ts";
import type { Digest } from "../../scribe/season/digest.ts";
import { climbOf } from "../../share/pictures/climb-of.ts";
import { ClimbPicture, climbSentences, topOf } from "../../share/pictures/climb-picture.tsx";
import { hoursSince } from "../../share/pictures/clock-hours.ts";
import { sessionsWords } from "../../words/sessions.ts";
import { summaryWords } from "../../words/summary.ts";
import type { Settings } from "../app.ts";
import { Card, InWords } from "../summary/card.tsx";
import { dayOf } from "./words-of.ts";

const words = sessionsWords.compare;

interface BothClimbsProps {
  of: readonly [Digest, Digest];
  sessions: readonly [Session, Session];
  settings: Settings;
}

/** Both days as they grew: as long and as high as the larger of the two. */
export function BothClimbs({ of, sessions, settings }: BothClimbsProps) {
  const climbs = sessions.map((session, place) =>
    climbOf(session, of[place]?.lastAt ?? 0, biasFrom(weighedNets([session]))),
  );
  const there = climbs.flatMap((climb) => climb ?? []);
  const longest = Math.max(0, ...there.map(({ from, to }) => to - from));
  const topG = Math.max(0, ...there.map(topOf));
  return (
    <Card title={summaryWords.went.title}>
      <p>{words.sameScale}</p>
      <div class="both">
        {climbs.map((climb, place) => {
          const [digest, session] = [of[place], sessions[place]];
          if (!digest || !session) return null;
          return (
            <div class="stack" key={digest.id}>
              <h3>{dayOf(digest)}</h3>
              {climb ? (
                <>
                  <ClimbPicture
                    of={climb}
                    styles={settings}
                    scale={{
                      to: climb.from + longest,
                      topG,
                      hours: hoursSince({ from: climb.from, to: climb.from + longest }),
                    }}
                  />
                  <InWords sentences={climbSentences(climb, session, settings)} />
                </>
              ) : (
                <p>{words.notStarted}</p>
              )}
            </div>
          );
        })}
      </div>
    </Card>
  );
}
