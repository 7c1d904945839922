import { Figure } from "../../ui/figure.tsx";
import { FillBar } from "../../ui/fill-bar.tsx";
import { formatWeight } from "../../ui/format.ts";
import type { App } from "../app.ts";
import { setUpParts } from "./set-up-parts.ts";

/** The set-up in force. */
export function InForce({ app }: { app: App }) {
  const parts = setUpParts(app.session.value.setUp, app.settings.value.length);
  return (
    <section class="figure" aria-label="Set-up in force">
      <h2 class="figure-name">Set-up</h2>
      {parts.length === 0 ? (
        <p>Not said yet: “rig one, depth half a metre”</p>
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
        {limitG && <Room spokenG={spokenG} limitG={limitG} style={weight} />}
      </p>
      {limitG && <FillBar share={spokenG / limitG} />}
    </section>
  );
}

interface RoomProps {
  spokenG: number;
  limitG: number;
  style: "lb-oz" | "kg";
}

function Room({ spokenG, limitG, style }: RoomProps) {
  const room = limitG - spokenG;
  if (room < 0) {
    return <span class="warn">over by {formatWeight(-room, style)}</span>;
  }
  return <span>room for {formatWeight(room, style)}</span>;
}
