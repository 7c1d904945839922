import { Figure } from "../../ui/figure.tsx";
import { FillBar } from "../../ui/fill-bar.tsx";
import { formatWeight } from "../../ui/format.ts";
import type { App } from "../app.ts";
import { setUpParts } from "./set-up-parts.ts";

/** The set-up in force. */
export function InForce({ app }: { app: App }) {
  const parts = setUpParts(app.session.value.setUp, app.settings.value.length);
  return (
    <section class="figure figure-wide" aria-label="Set-up in force">
      <h2 class="for-ears">Set-up</h2>
      {parts.length === 0 ? (
        <p>Set-up not said yet: “rig one, depth half a metre”</p>
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
    <section class="figure" aria-label="Net in force">
      <h2 class="figure-name">Net {net}</h2>
      <p class="pairs">
        <span>
          <Figure text={formatWeight(spokenG, weight)} />
          {limitG && ` of ${formatWeight(limitG, weight)}`}
        </span>
        {limitG && spokenG > limitG && (
          <span class="warn">over by {formatWeight(spokenG - limitG, weight)}</span>
        )}
      </p>
      {limitG && <FillBar share={spokenG / limitG} />}
    </section>
  );
}
