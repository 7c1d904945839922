import { appWords } from "../words/app.ts";
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
  const words = appWords.news;
  const { trouble } = app.hearing.value;
  const last = app.lastHeard.value;
  const news = [
    app.nudge.value,
    last && (last.understood.join(". ") || last.answer || words.notForTheLog(last.text)),
    last?.verdict === "check" && words.markedForALook,
    last && !last.isStored && words.notStored,
    trouble && `${trouble.what} ${trouble.todo}`,
  ];
  return news.filter(Boolean).join(". ");
}
