/** The screen of the bank: read at arm's length, touched once. */
import "./live.css";
import { liveWords } from "../../words/live.ts";
import type { App } from "../app.ts";
import { Before } from "./before.tsx";
import { Ears } from "./ears.tsx";
import { InForce, NetInForce } from "./in-force.tsx";
import { Last } from "./last.tsx";
import { Rate, SinceFish, Tally } from "./tally.tsx";
import { Typing } from "./typing.tsx";

export function Live({ app }: { app: App }) {
  const { state, setUp } = app.session.value;
  const nudge = app.nudge.value;
  return (
    <>
      <h1 class="for-ears">{liveWords.title}</h1>
      <div class="live">
        <div class="live-heard">
          <Ears app={app} />
          {nudge && <p class="notice live-nudge">{nudge}</p>}
          <Last app={app} />
        </div>
        {state === "ready" && Object.keys(setUp).length > 0 && <InForce app={app} />}
        {state === "ready" ? <Before app={app} /> : <Standing app={app} />}
        <Typing app={app} />
      </div>
    </>
  );
}

function Standing({ app }: { app: App }) {
  return (
    <div class="live-standing">
      <Tally app={app} />
      <SinceFish app={app} />
      <Rate app={app} />
      <InForce app={app} />
      <NetInForce app={app} />
      {app.session.value.state === "ended" && <Ended />}
    </div>
  );
}

function Ended() {
  const { label, title, review, summary } = liveWords.ended;
  return (
    <section class="ticket live-ended" aria-label={label}>
      <h2>{title}</h2>
      <div class="begin-ways">
        <a class="button button-main" href="#review">
          {review}
        </a>
        <a class="button button-main" href="#summary">
          {summary}
        </a>
      </div>
    </section>
  );
}
