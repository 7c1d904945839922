import { rateNow } from "../../analysis/rates/rate-now.ts";
import { Figure } from "../../ui/figure.tsx";
import { formatElapsed, formatRate, formatWeight } from "../../ui/format.ts";
import { tallyWords as say } from "../../words/tally.ts";
import type { App } from "../app.ts";
import { Bag } from "./bag.tsx";

/** The running weight and count. */
export function Tally({ app }: { app: App }) {
  const { spokenG, count, unweighed } = app.session.value;
  const { weight } = app.settings.value;
  return (
    <section class="tally" aria-label={say.weightAndCount}>
      <p>
        <Figure text={formatWeight(spokenG, weight)} />
      </p>
      <p>
        <Figure text={say.fish(count)} />
      </p>
      <p class="tally-beside">
        <Bag app={app} />
        {unweighed > 0 && <span>{say.withoutWeight(unweighed)}</span>}
      </p>
    </section>
  );
}

/** How long since the last fish; since the start, while there is none. */
export function SinceFish({ app }: { app: App }) {
  const { lastFishAt, startedAt, endedAt } = app.session.value;
  const since = lastFishAt ?? startedAt;
  if (since === undefined || endedAt !== undefined) return null;
  return (
    <section class="figure figure-narrow" aria-label={say.sinceFishFor}>
      <h2 class="figure-name">{lastFishAt === undefined ? say.sinceStart : say.sinceFish}</h2>
      <p class="numeral" role="timer">
        {formatElapsed(app.now.value - since)}
      </p>
    </section>
  );
}

/** The rate now against the session. */
export function Rate({ app }: { app: App }) {
  const { now, session } = rateNow(app.session.value, app.now.value);
  if (session === undefined) return null;
  return (
    <section class="figure figure-narrow" aria-label={say.rate}>
      <h2 class="figure-name">{say.fishAnHour}</h2>
      <p class="pairs">
        {now !== undefined && (
          <span>
            <strong class="numeral">{formatRate(now)}</strong> {say.halfHour}
          </span>
        )}
        <span>
          <strong class="numeral">{formatRate(session)}</strong> {say.session}
        </span>
      </p>
    </section>
  );
}
