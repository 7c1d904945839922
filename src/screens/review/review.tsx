/** Going through the session with dry hands: what was doubtful first. */
import "./review.css";
import { useEffect, useLayoutEffect, useRef, useState } from "preact/hooks";
import { reviewWords } from "../../words/review.ts";
import type { App } from "../app.ts";
import { AddEntry } from "./add-entry.tsx";
import { AllEntries } from "./all-entries.tsx";
import { ByVoice } from "./by-voice.tsx";
import { NotTaken } from "./not-taken.tsx";
import { useReadOut } from "./read-out.ts";
import { StepsBar } from "./steps-bar.tsx";
import { TakenOut } from "./taken-out.tsx";
import { ToCheck } from "./to-check.tsx";
import { WeighIn } from "./weigh-in.tsx";

export function Review({ app }: { app: App }) {
  const top = useRef<HTMLHeadingElement>(null);
  const question = useRef<HTMLHeadingElement>(null);
  const [later, setLater] = useState<readonly string[]>([]);
  const [open, setOpen] = useState<string>();
  const [isAloud, setAloud] = useState(false);
  const session = app.session.value;
  const marked = session.entries.filter(({ verdict }) => verdict === "check");
  // Put off once, it waits behind the others; put off again, behind those put off before.
  const entry =
    marked.find(({ id }) => !later.includes(id)) ??
    marked.find(({ id }) => id === later.find((one) => marked.some((other) => other.id === one)));
  const opened = session.entries.find(({ id }) => id === open);
  const inQuestion = (opened ?? entry)?.id;

  // What was touched may be gone with what it did; the keyboard goes on from the next question.
  useEffect(() => {
    if (document.activeElement !== document.body) return;
    (entry ? question : top).current?.focus({ preventScroll: true });
  }, [session, entry]);
  // Before anything is painted, and so before anything can be said of it.
  useLayoutEffect(() => {
    app.putRight.inQuestion.value = inQuestion;
    return () => {
      app.putRight.inQuestion.value = undefined;
    };
  }, [app, inQuestion]);
  useReadOut(app, isAloud, entry);

  return (
    <div class="review-page">
      <div class="review-head">
        <h1 ref={top} tabIndex={-1}>
          {reviewWords.title}
        </h1>
        <StepsBar app={app} />
      </div>
      <div class="review">
        <div class="review-part">
          <ToCheck
            app={app}
            entry={entry}
            left={marked.length}
            onLater={({ id }) => setLater([...later.filter((one) => one !== id), id])}
            heading={question}
          />
          <ByVoice app={app} isAloud={isAloud} onAloud={setAloud} />
          <WeighIn app={app} />
          <NotTaken app={app} />
        </div>
        <div class="review-part">
          <AddEntry app={app} />
          <AllEntries app={app} open={open} onOpen={setOpen} />
          <TakenOut app={app} />
        </div>
      </div>
    </div>
  );
}
