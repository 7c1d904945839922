import { counted } from "../ui/format.ts";
import type { App } from "./app.ts";

/** What must be seen on whichever screen is open: storing that fails, a sample, a new version. */
export function Notices({ app }: { app: App }) {
  return (
    <>
      <KeepingNotice app={app} />
      <SampleNotice app={app} />
      <UpdateNotice app={app} />
    </>
  );
}

function KeepingNotice({ app }: { app: App }) {
  const { unsaved, trouble, damaged } = app.keeping.value;
  if (!trouble && damaged === 0) return null;
  return (
    <section class="notice notice-alarm" aria-label="Storing">
      {trouble && (
        <p>
          <strong>{counted(unsaved, "entry is", "entries are")} not stored.</strong> {trouble}
        </p>
      )}
      {damaged > 0 && (
        <p>
          {counted(damaged, "stored record")} could not be read and {damaged === 1 ? "was" : "were"}{" "}
          set aside. The rest is whole; an export takes them along.
        </p>
      )}
    </section>
  );
}

function SampleNotice({ app }: { app: App }) {
  const sample = app.sample.value;
  if (!sample) return null;
  return (
    <section class="notice row row-apart" aria-label="Sample session">
      <p>
        {sample.done < sample.of
          ? `Sample session: phrase ${sample.done} of ${sample.of}`
          : "That was the sample session."}
      </p>
      <button type="button" class="button" onClick={() => app.stopSample()}>
        Leave the sample
      </button>
    </section>
  );
}

function UpdateNotice({ app }: { app: App }) {
  const { state } = app.session.value;
  const isBusy = state === "fishing" || state === "paused";
  if (!app.updateWaiting.value || isBusy) return null;
  return (
    <section class="notice row row-apart" aria-label="New version">
      <p>A new version is here.</p>
      <button type="button" class="button" onClick={() => app.takeUpdate()}>
        Take it now
      </button>
    </section>
  );
}
