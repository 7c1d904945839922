import { useSignal } from "@preact/signals";
import type { App } from "../app.ts";

/** The whole log as a file, for keeping or for another phone. */
export function ExportLog({ app }: { app: App }) {
  const trouble = useSignal("");
  const save = async () => {
    try {
      download(await app.exportLog(), `pegscribe-log-${dayOf(app.now.peek())}.json`);
      trouble.value = "";
    } catch {
      trouble.value = "The file could not be written. Try again.";
    }
  };
  return (
    <section class="ticket" aria-labelledby="export">
      <h2 id="export">Keep it</h2>
      <p>
        All sessions on this phone, in one file. Some browsers clear a page’s data that has not been
        opened for a week: a file stays.
      </p>
      <button type="button" class="button" onClick={save}>
        Save the log as a file
      </button>
      {trouble.value && <p class="warn">{trouble.value}</p>}
    </section>
  );
}

function download(file: Blob, name: string): void {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(file);
  link.download = name;
  link.click();
  // The browser reads the file after this turn; it must not be gone by then.
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}

/** "2026-06-06", by the date in London or wherever the phone is. */
function dayOf(at: number): string {
  const date = new Date(at);
  const parts = [date.getFullYear(), date.getMonth() + 1, date.getDate()];
  return parts.map((part) => String(part).padStart(2, "0")).join("-");
}
