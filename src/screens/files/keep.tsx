import { useState } from "preact/hooks";
import { saveFile } from "../../share/send.ts";
import { Choices } from "../../ui/choices.tsx";
import { filesWords } from "../../words/files.ts";
import { passOnWords } from "../../words/pass-on.ts";
import type { LogForm } from "../app/pass-on.ts";
import type { App } from "../app.ts";

const words = filesWords.keep;

const EXTENTS = [
  { value: "all", name: words.all },
  { value: "open", name: words.open },
] as const;

type Extent = (typeof EXTENTS)[number]["value"];

const FORMS: readonly LogForm[] = ["json", "events", "fish"];

/** The log out of the phone, for keeping, a spreadsheet, or another phone. */
export function Keep({ app }: { app: App }) {
  const [extent, setExtent] = useState<Extent>("all");
  const [outcome, setOutcome] = useState("");
  const write = async (form: LogForm) => {
    setOutcome(await written(app, form, extent === "all"));
  };
  return (
    <section class="ticket" aria-labelledby="keep">
      <h2 id="keep">{words.title}</h2>
      <p>{words.about}</p>
      <Choices label={words.extent} options={EXTENTS} value={extent} onChange={setExtent} />
      <p>{words.everything}</p>
      {FORMS.map((form) => (
        <button
          key={form}
          type="button"
          class={form === "json" ? "button button-main" : "button"}
          onClick={() => write(form)}
        >
          {words[form]}
        </button>
      ))}
      <p role="status">{outcome}</p>
      <a href="./pegscribe-log.schema.json">{words.schema}</a>
    </section>
  );
}

/** What came of it, in words. */
async function written(app: App, form: LogForm, whole: boolean): Promise<string> {
  try {
    const { file, sessions, events, incomplete } = await app.passOn.logFile(form, whole);
    const sent = await saveFile(file);
    const holds = words.holds(passOnWords.outcomes[sent], file.name, sessions, events);
    return incomplete === undefined ? holds : `${holds} ${words.incomplete(incomplete)}`;
  } catch {
    return words.failed;
  }
}
