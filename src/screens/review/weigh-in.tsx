import type { Net } from "../../log/session.ts";
import { counted, formatWeight } from "../../ui/format.ts";
import { WeightForm } from "../../ui/weight-form.tsx";
import { reviewWords } from "../../words/review.ts";
import type { App } from "../app.ts";
import { biasAfter } from "../bias-after.ts";
import { WhatScalesSay } from "../what-scales-say.tsx";

const { weighIn: words } = reviewWords;

/** What the scales said of each net. */
export function WeighIn({ app }: { app: App }) {
  const session = app.session.value;
  return (
    <section class="stack" aria-labelledby="weigh-in">
      <h2 id="weigh-in">{words.title}</h2>
      <ul class="cards">
        {session.nets.map((net) => (
          <li class="ticket" key={net.number}>
            <NetWeight app={app} net={net} />
          </li>
        ))}
      </ul>
      {session.nets.some(({ weighedG }) => weighedG !== undefined) && (
        <div class="ticket">
          <WhatScalesSay
            session={session}
            bias={biasAfter(app.past.value, session)}
            styles={app.settings.value}
          />
        </div>
      )}
    </section>
  );
}

function NetWeight({ app, net }: { app: App; net: Net }) {
  const { number, count, spokenG, unweighed, weighedG } = net;
  const { weight } = app.settings.value;
  return (
    <>
      <h3>{words.net(number)}</h3>
      <p>
        {words.spoken(formatWeight(spokenG, weight), counted(count, "fish", "fish"))}
        {unweighed > 0 && words.unweighed(unweighed)}
        {weighedG !== undefined && (
          <>
            . {words.scales}
            <strong>{formatWeight(weighedG, weight)}</strong>
          </>
        )}
      </p>
      <WeightForm
        label={words.field(number)}
        style={weight}
        from={weighedG ?? spokenG}
        save={words.save(number)}
        onSave={(grams) => app.weigh(number, grams)}
      />
      {weighedG !== undefined && (
        <button type="button" class="button" onClick={() => app.unweigh(net)}>
          {words.takeBack(number)}
        </button>
      )}
    </>
  );
}
