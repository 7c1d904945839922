/** What the session came to; follows the log while it grows. */
import "./summary.css";
import { useComputed } from "@preact/signals";
import { useMemo } from "preact/hooks";
import { totalOf } from "../../analysis/weights/total.ts";
import { summarise } from "../../share/summary.ts";
import { PARTS, useGrowing } from "../../ui/use-growing.ts";
import { passOnWords } from "../../words/pass-on.ts";
import { sessionsWords } from "../../words/sessions.ts";
import { summaryWords } from "../../words/summary.ts";
import type { App } from "../app.ts";
import { biasAfter } from "../bias-after.ts";
import { PassOn } from "../pass-on/pass-on.tsx";
import { Nets, SetUpsUsed } from "./against.tsx";
import { BiteTimes } from "./bite-times.tsx";
import { ByDepth } from "./by-depth.tsx";
import { Losses, Species, Totals } from "./figures.tsx";
import { HowItWent } from "./how-it-went.tsx";
import { WhatWorked } from "./what-worked.tsx";

const MS_PER_MINUTE = 60_000;

export function SummaryScreen({ app }: { app: App }) {
  const isStarted = useComputed(() => app.session.value.startedAt !== undefined).value;
  return isStarted ? <Started app={app} /> : <NotStarted />;
}

function Started({ app }: { app: App }) {
  const session = app.session.value;
  const settings = app.settings.value;
  // Times here are told to the minute: summing up every second would only warm the phone.
  const minute = useComputed(() => Math.ceil(app.now.value / MS_PER_MINUTE) * MS_PER_MINUTE).value;
  const past = app.past.value;
  // Each is made once: while others are added, those that are there are the same ones still.
  const parts = useMemo(() => {
    const seen = { session, settings, now: minute };
    const summary = summarise(session, minute);
    const bias = biasAfter(past, session);
    return [
      <Totals key="total" summary={summary} settings={settings} bag={totalOf(session, bias)} />,
      <HowItWent key="went" {...seen} bias={bias} />,
      <WhatWorked key="worked" {...seen} />,
      <ByDepth key="depths" {...seen} />,
      <BiteTimes key="bites" {...seen} />,
      <Species key="species" summary={summary} settings={settings} />,
      <Losses key="lost" summary={summary} />,
      <SetUpsUsed key="set-ups" summary={summary} settings={settings} />,
      <Nets key="nets" summary={summary} settings={settings} session={session} bias={bias} />,
      <PassOn key="pass-on" app={app} />,
    ];
  }, [app, session, settings, minute, past]);
  const [total, ...rest] = parts;
  const made = useGrowing(rest.length, PARTS);
  return (
    <>
      <h1>{summaryWords.title}</h1>
      <div class="tickets">
        {total}
        {/* Shown once all are there: in columns, each one more would move those before it. */}
        <div class="tickets-rest" hidden={made < rest.length}>
          {rest.slice(0, made)}
        </div>
      </div>
    </>
  );
}

function NotStarted() {
  return (
    <>
      <h1>{summaryWords.title}</h1>
      <p>{summaryWords.notStarted}</p>
      <div class="row">
        <a class="button" href="#sessions">
          {sessionsWords.title}
        </a>
        <a class="button" href="#files">
          {passOnWords.files}
        </a>
      </div>
    </>
  );
}
