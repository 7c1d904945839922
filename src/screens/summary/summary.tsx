/** What the session came to; follows the log while it grows. */
import "./summary.css";
import { useComputed } from "@preact/signals";
import { useMemo } from "preact/hooks";
import { totalOf } from "../../analysis/weights/total.ts";
import { summarise } from "../../share/summary.ts";
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
  const session = app.session.value;
  const settings = app.settings.value;
  // Times here are told to the minute: summing up every second would only warm the phone.
  const minute = useComputed(() => Math.ceil(app.now.value / MS_PER_MINUTE) * MS_PER_MINUTE).value;
  const summary = useMemo(() => summarise(session, minute), [session, minute]);
  const past = app.past.value;
  const bias = useMemo(() => biasAfter(past, session), [past, session]);
  if (session.startedAt === undefined) return <NotStarted />;
  const seen = { session, settings, now: minute };
  return (
    <>
      <h1>{summaryWords.title}</h1>
      <div class="tickets">
        <Totals summary={summary} settings={settings} bag={totalOf(session, bias)} />
        <HowItWent {...seen} bias={bias} />
        <WhatWorked {...seen} />
        <ByDepth {...seen} />
        <BiteTimes {...seen} />
        <Species summary={summary} settings={settings} />
        <Losses summary={summary} />
        <SetUpsUsed summary={summary} settings={settings} />
        <Nets summary={summary} settings={settings} session={session} bias={bias} />
        <PassOn app={app} />
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
