import { useState } from "preact/hooks";
import { Refusal } from "../../log/refusal.ts";
import { StoreTrouble } from "../../log/trouble.ts";
import { filesWords } from "../../words/files.ts";
import type { TakenLog } from "../app/pass-on.ts";
import type { App } from "../app.ts";

const words = filesWords.takeIn;

/** A file of this phone or another one, into the log. */
export function TakeIn({ app }: { app: App }) {
  const [outcome, setOutcome] = useState<Outcome>({ says: words.hint });
  const take = async (file: File) => {
    setOutcome({ says: words.reading });
    setOutcome(await taken(app, file));
  };
  return (
    <section class="ticket" aria-labelledby="take-in">
      <h2 id="take-in">{words.title}</h2>
      <input
        class="input"
        type="file"
        aria-labelledby="take-in"
        accept=".json,.csv,.txt,application/json,text/csv,text/plain"
        aria-describedby="take-in-outcome"
        onChange={({ currentTarget: input }) => {
          const file = input.files?.[0];
          if (file) void take(file).then(() => clear(input));
        }}
      />
      <p id="take-in-outcome" role="status">
        {outcome.says}
      </p>
      {outcome.log && <FurtherSteps app={app} log={outcome.log} again={() => take(outcome.file)} />}
    </section>
  );
}

/** So that the same file can be chosen again. */
const clear = (input: HTMLInputElement) => {
  input.value = "";
};

type Outcome = { says: string; log?: never } | { says: string; log: TakenLog; file: File };

async function taken(app: App, file: File): Promise<Outcome> {
  try {
    const result = await app.passOn.takeIn(file);
    if ("log" in result) return { says: logWords(result.log), log: result.log, file };
    location.hash = result.shared;
    return { says: "" };
  } catch (cause) {
    const isForAnglers = cause instanceof Refusal || cause instanceof StoreTrouble;
    return { says: isForAnglers ? cause.message : words.failed };
  }
}

function logWords({ added, known, sessions, damaged }: TakenLog): string {
  const what = added === 0 ? words.allKnown : words.taken(added, sessions) + words.known(known);
  return what + words.damaged(damaged);
}

interface FurtherStepsProps {
  app: App;
  log: TakenLog;
  again: () => Promise<void>;
}

/** What is done only when it is asked for: sessions taken out on purpose, and the phone's settings. */
function FurtherSteps({ app, log: { takenOut, settings }, again }: FurtherStepsProps) {
  const [isSet, setIsSet] = useState(false);
  const readmit = async () => {
    await app.passOn.readmit(takenOut);
    await again();
  };
  return (
    <>
      {takenOut.length > 0 && (
        <>
          <p>{words.takenOut(takenOut.length)}</p>
          <button type="button" class="button" onClick={readmit}>
            {words.bringBack}
          </button>
        </>
      )}
      {settings !== undefined && (
        <>
          <p>{isSet ? words.settingsUsed : words.settings}</p>
          <button
            type="button"
            class="button"
            disabled={isSet}
            onClick={() => {
              app.passOn.takeSettings(settings);
              setIsSet(true);
            }}
          >
            {words.useSettings}
          </button>
        </>
      )}
    </>
  );
}
