/** What a link shows that somebody sent. Nothing of it gets into the log. */
import { useEffect, useState } from "preact/hooks";
import { Refusal } from "../../log/refusal.ts";
import { codeIn, readCode, type Shared } from "../../share/link/link.ts";
import { formatClock } from "../../ui/format.ts";
import { formatDay } from "../../ui/format-day.ts";
import { sharedWords as words } from "../../words/shared.ts";
import type { App } from "../app.ts";
import { Sheet } from "../pass-on/sheet.tsx";
import { Told } from "./told.tsx";

export function SharedScreen({ app }: { app: App }) {
  const opened = useShared();
  if (!opened) return <p>{words.opening}</p>;
  return (
    <>
      <h1>{"refusal" in opened ? words.refusedTitle : words.title}</h1>
      {"refusal" in opened ? <p>{opened.refusal}</p> : <Opened app={app} shared={opened.shared} />}
      <a class="button" href="#live">
        {words.ownLog}
      </a>
    </>
  );
}

function Opened({ app, shared }: { app: App; shared: Shared }) {
  const { session, summary, now } = shared;
  const styles = app.settings.value;
  const isUnfinished = session !== undefined && session.endedAt === undefined;
  return (
    <>
      <p>{words.about}</p>
      {isUnfinished && <p>{words.asFar(formatDay(now), formatClock(now))}</p>}
      <Told shared={shared} styles={styles} />
      {session && <Sheet passed={{ session, summary, now, styles, allowed: ALL }} />}
    </>
  );
}

/** Whoever made the link chose what is in it. */
const ALL = { water: true, peg: true, notes: true } as const;

type Outcome = { shared: Shared } | { refusal: string };

/** What the address holds now, which another link may change while the page stays. */
function useShared(): Outcome | undefined {
  const [outcome, setOutcome] = useState<Outcome>();
  useEffect(() => {
    let turn = 0;
    const open = async () => {
      turn += 1;
      const own = turn;
      const code = codeIn(location.hash);
      if (code === undefined) return;
      const read = await readCode(code).then(
        (shared) => ({ shared }),
        (cause) => ({ refusal: cause instanceof Refusal ? cause.message : words.broken }),
      );
      if (own === turn) setOutcome(read);
    };
    void open();
    addEventListener("hashchange", open);
    return () => {
      turn += 1;
      removeEventListener("hashchange", open);
    };
  }, []);
  return outcome;
}
