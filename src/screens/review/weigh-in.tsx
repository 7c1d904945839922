import type { Net } from "../../log/session.ts";
import { counted, formatWeight } from "../../ui/format.ts";
import { WeightForm } from "../../ui/weight-form.tsx";
import type { App } from "../app.ts";

/** What the scales said of each net. */
export function WeighIn({ app }: { app: App }) {
  return (
    <section class="stack" aria-labelledby="weigh-in">
      <h2 id="weigh-in">Weigh-in</h2>
      <ul class="cards">
        {app.session.value.nets.map((net) => (
          <li class="ticket" key={net.number}>
            <NetWeight app={app} net={net} />
          </li>
        ))}
      </ul>
    </section>
  );
}

function NetWeight({ app, net }: { app: App; net: Net }) {
  const { number, count, spokenG, unweighed, weighedG } = net;
  const { weight } = app.settings.value;
  return (
    <>
      <h3>Net {number}</h3>
      <p>
        Spoken: {formatWeight(spokenG, weight)} from {counted(count, "fish", "fish")}
        {unweighed > 0 && `, ${unweighed} without a weight`}
        {weighedG !== undefined && (
          <>
            . Scales: <strong>{formatWeight(weighedG, weight)}</strong>
          </>
        )}
      </p>
      <WeightForm
        label={`The scales said, net ${number}`}
        style={weight}
        save="Enter"
        onSave={(grams) => app.weigh(number, grams)}
      />
    </>
  );
}
