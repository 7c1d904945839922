/** What the session came to; follows the log while it grows. */
import "./summary.css";
import { useComputed } from "@preact/signals";
import { useMemo } from "preact/hooks";
import { summarise } from "../../share/summary.ts";
import type { App } from "../app.ts";
import { Nets, SetUpsUsed } from "./against.tsx";
import { ExportLog } from "./export-log.tsx";
import { Losses, Species, Totals } from "./figures.tsx";
import { Picture } from "./picture.tsx";
import { Send } from "./send.tsx";

const MS_PER_MINUTE = 60_000;

export function SummaryScreen({ app }: { app: App }) {
  const session = app.session.value;
  const settings = app.settings.value;
  // Times here are told to the minute: summing up every second would only warm the phone.
  const minute = useComputed(() => Math.ceil(app.now.value / MS_PER_MINUTE) * MS_PER_MINUTE).value;
  const summary = useMemo(() => summarise(session, minute), [session, minute]);
  if (session.startedAt === undefined) return <NotStarted app={app} />;
  return (
    <>
      <h1>Summary</h1>
      <div class="tickets">
        <Totals summary={summary} settings={settings} />
        <Picture session={session} now={minute} weight={settings.weight} />
        <Species summary={summary} settings={settings} />
        <SetUpsUsed summary={summary} settings={settings} />
        <Losses summary={summary} />
        <Nets summary={summary} settings={settings} />
        <Send app={app} />
        <ExportLog app={app} />
      </div>
    </>
  );
}

function NotStarted({ app }: { app: App }) {
  return (
    <>
      <h1>Summary</h1>
      <p>
        This session has not started yet. Once it has, its sums stand here. Earlier sessions are
        opened under Set-up.
      </p>
      <ExportLog app={app} />
    </>
  );
}
