import type { App } from "./app.ts";

/** The one place from which changes are read aloud to those who listen to the page. */
export function Spoken({ app }: { app: App }) {
  return (
    <p class="for-ears" role="status" aria-live="polite">
      {newsOf(app)}
    </p>
  );
}

function newsOf(app: App): string {
  const { trouble } = app.hearing.value;
  const last = app.lastHeard.value;
  const news = [
    app.nudge.value,
    last && (last.understood.join(". ") || last.answer || `Not for the log: ${last.text}`),
    last?.verdict === "check" && "Marked for a look",
    last && !last.isStored && "Not stored yet",
    trouble && `${trouble.what} ${trouble.todo}`,
  ];
  return news.filter(Boolean).join(". ");
}
