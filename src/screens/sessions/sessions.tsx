/** All sessions on this phone: the next one, the list, sums over them, and two side by side. */
import "../summary/summary.css";
import "./sessions.css";
import { useComputed, useSignal } from "@preact/signals";
import type { Digest } from "../../scribe/season/digest.ts";
import { fits, type Query } from "../../scribe/season/query.ts";
import type { Season } from "../../scribe/season/season.ts";
import { useLater } from "../../ui/later.tsx";
import { useAnswer } from "../../ui/use-answer.ts";
import { sessionsWords } from "../../words/sessions.ts";
import type { App } from "../app.ts";
import { Compare } from "./compare.tsx";
import { Find } from "./find.tsx";
import { List } from "./list.tsx";
import { Next } from "./next.tsx";
import { SeasonSumsCard } from "./season-sums.tsx";

export function SessionsScreen({ app }: { app: App }) {
  const season = useLater(() => app.season());
  return season ? (
    <Opened app={app} season={season} />
  ) : (
    <>
      <h1>{sessionsWords.title}</h1>
      <p class="soft">{sessionsWords.opening}</p>
    </>
  );
}

interface OpenedProps {
  app: App;
  season: Season;
}

function Opened({ app, season }: OpenedProps) {
  const query = useSignal<Query>({});
  const chosen = useSignal<readonly Digest[]>([]);
  const looked = useAnswer(() => season.look(), [season, app.sessions.value]);
  const [one, other] = chosen.value;
  const leave = () => {
    chosen.value = [];
  };
  if (one && other) return <Compare app={app} season={season} of={[one, other]} onBack={leave} />;
  const digests = season.digests.value ?? [];
  const isMaking = useComputed(() => season.progress.value !== undefined).value;
  const fitting = digests.filter((digest) => fits(digest, query.value));
  return (
    <>
      <h1>{sessionsWords.title}</h1>
      {looked.is === "failed" && <p class="warn">{looked.why}</p>}
      <Making season={season} />
      <Next app={app} season={season} digests={digests} isMaking={isMaking} />
      {looked.is === "there" && digests.length === 0 && <p>{sessionsWords.none}</p>}
      {digests.length > 1 && <Find digests={digests} query={query} />}
      {!isMaking && digests.some(({ past }) => past) && (
        <SeasonSumsCard
          season={season}
          digests={digests}
          query={query.value}
          settings={app.settings.value}
        />
      )}
      <List app={app} season={season} digests={fitting} of={digests.length} chosen={chosen} />
    </>
  );
}

/** So few are made before anybody could read that they are being made. */
const WORTH_TELLING = 3;

/** How many digests are made, of how many. Apart, as all else here would be shown anew with each. */
function Making({ season }: { season: Season }) {
  const progress = season.progress.value;
  return (
    <p role="status" class={progress ? "" : "for-ears"}>
      {progress && progress.of > WORTH_TELLING && sessionsWords.making(progress.done, progress.of)}
    </p>
  );
}
