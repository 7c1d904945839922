import { useComputed } from "@preact/signals";
import { lasts } from "../../log/lasts.ts";
import type { SetUp } from "../../log/session.ts";
import type { Digest } from "../../scribe/season/digest.ts";
import type { Season } from "../../scribe/season/season.ts";
import { setUpText } from "../../share/summary-text.ts";
import { sessionsWords } from "../../words/sessions.ts";
import type { App } from "../app.ts";
import { Card } from "../summary/card.tsx";
import { WhereToStart } from "./where-to-start.tsx";
import { dayOf, placeOf } from "./words-of.ts";

const words = sessionsWords.next;

interface NextProps {
  app: App;
  season: Season;
  digests: readonly Digest[];
  /** Some digests are being made. */
  isMaking: boolean;
}

/** Beginning the next session: empty, like the last one, or where the earlier ones point to. */
export function Next({ app, season, digests, isMaking }: NextProps) {
  const last = digests.find(({ past }) => past);
  const runs = useComputed(() => lasts(app.session.value)).value;
  if (runs) {
    return (
      <Card title={words.title}>
        <p>{words.running}</p>
      </Card>
    );
  }
  const begin = () => {
    app.newSession();
    location.hash = "#live";
  };
  const like = async (digest: Digest, instead?: SetUp) => {
    await season.startLike(digest, instead);
    location.hash = "#live";
  };
  return (
    <Card title={words.title}>
      {last && <LastTime digest={last} app={app} onLike={() => like(last)} />}
      <button type="button" class={last ? "button" : "button button-main"} onClick={begin}>
        {words.begin}
      </button>
      {last && !isMaking && (
        <WhereToStart
          season={season}
          digests={digests}
          last={last}
          settings={app.settings.value}
          onStart={(setUp) => like(last, setUp)}
        />
      )}
    </Card>
  );
}

function LastTime({ digest, app, onLike }: { digest: Digest; app: App; onLike: () => void }) {
  const isKnown = Object.keys(digest.setUp).length > 0;
  return (
    <>
      <p>
        {words.last(dayOf(digest), placeOf(digest))}{" "}
        {isKnown && words.setUp(setUpText(digest.setUp, app.settings.value))}
      </p>
      <button type="button" class="button button-main" onClick={onLike}>
        {words.like}
      </button>
      <p>{words.likeHint}</p>
    </>
  );
}
