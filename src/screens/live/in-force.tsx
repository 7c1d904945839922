import { Figure } from "../../ui/figure.tsx";
import { FillBar } from "../../ui/fill-bar.tsx";
import { formatWeight } from "../../ui/format.ts";
import { tallyWords as say } from "../../words/tally.ts";
import type { App } from "../app.ts";
import { setUpParts } from "./set-up-parts.ts";

/** The set-up in force. */
export function InForce({ app }: { app: App }) {
  const parts = setUpParts(app.session.value.setUp, app.settings.value.length);
  return (
    <section class="figure figure-wide" aria-label={say.setUpFor}>
      <h2 class="for-ears">{say.setUp}</h2>
      {parts.length === 0 ? (
        <p>{say.noSetUp}</p>
      ) : (
        <dl class="parts">
          {parts.map(({ name, value }) => (
            <div key={name}>
              <dt>{name}</dt>
              <dd>{value}</dd>
            </div>
          ))}
        </dl>
      )}
    </section>
  );
}

/** The net in force against its limit. */
export function NetInForce({ app }: { app: App }) {
  const { net, nets, plan } = app.session.value;
  const { weight } = app.settings.value;
  const spokenG = nets.find(({ number }) => number === net)?.spokenG ?? 0;
  const limitG = plan.netLimitG;
  return (
    <section class="figure" aria-label={say.netFor}>
      <h2 class="figure-name">{say.net(net)}</h2>
      <p class="pairs">
        <span>
          <Figure text={formatWeight(spokenG, weight)} />
          {limitG && say.ofLimit(formatWeight(limitG, weight))}
        </span>
        {limitG && spokenG > limitG && (
          <span class="warn">{say.overBy(formatWeight(spokenG - limitG, weight))}</span>
        )}
      </p>
      {limitG && <FillBar share={spokenG / limitG} />}
    </section>
  );
}
