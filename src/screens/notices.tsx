import { lasts } from "../log/lasts.ts";
import { joinWords } from "../words/join.ts";
import { noticeWords as words } from "../words/notices.ts";
import type { App } from "./app.ts";

/** What must be seen on whichever screen is open: storing that fails, a sample, a new version. */
export function Notices({ app }: { app: App }) {
  return (
    <>
      <KeepingNotice app={app} />
      <SampleNotice app={app} />
      <UpdateNotice app={app} />
      <BoardNotice app={app} />
    </>
  );
}

function KeepingNotice({ app }: { app: App }) {
  const { unsaved, trouble, damaged } = app.keeping.value;
  if (!trouble && damaged === 0) return null;
  return (
    <section class="notice notice-alarm" aria-label={words.storing.label}>
      {trouble && (
        <p>
          <strong>{unsaved > 0 ? words.storing.unsaved(unsaved) : words.storing.unread}</strong>{" "}
          {trouble}
        </p>
      )}
      {damaged > 0 && <p>{words.storing.damaged(damaged)}</p>}
    </section>
  );
}

/** Only what does not mend itself; why, and what to do, stands where the board is joined. */
function BoardNotice({ app }: { app: App }) {
  if (app.board.sending.value.is !== "refused") return null;
  const { label, trouble, why } = joinWords.notice;
  return (
    <section class="notice row row-apart" aria-label={label}>
      <p>{trouble}</p>
      <a class="button" href="#join">
        {why}
      </a>
    </section>
  );
}

function SampleNotice({ app }: { app: App }) {
  const sample = app.sample.value;
  if (!sample) return null;
  return (
    <section class="notice row row-apart" aria-label={words.sample.label}>
      <p>
        {sample.done < sample.of ? words.sample.playing(sample.done, sample.of) : words.sample.over}
      </p>
      <button type="button" class="button" onClick={() => app.stopSample()}>
        {words.sample.leave}
      </button>
    </section>
  );
}

function UpdateNotice({ app }: { app: App }) {
  if (!app.updateWaiting.value || lasts(app.session.value)) return null;
  return (
    <section class="notice row row-apart" aria-label={words.update.label}>
      <p>{words.update.isHere}</p>
      <button type="button" class="button" onClick={() => app.takeUpdate()}>
        {words.update.take}
      </button>
    </section>
  );
}
