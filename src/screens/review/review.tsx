/** Going through the session with dry hands: what was doubtful first. */
import "./review.css";
import { useEffect, useRef } from "preact/hooks";
import type { App } from "../app.ts";
import { AddEntry } from "./add-entry.tsx";
import { AllEntries } from "./all-entries.tsx";
import { NotTaken } from "./not-taken.tsx";
import { StepsBar } from "./steps-bar.tsx";
import { TakenOut } from "./taken-out.tsx";
import { ToCheck } from "./to-check.tsx";
import { WeighIn } from "./weigh-in.tsx";

export function Review({ app }: { app: App }) {
  const top = useRef<HTMLHeadingElement>(null);
  const session = app.session.value;
  // What was touched may be gone with what it did; the keyboard goes on from the top, by undo.
  useEffect(() => {
    if (document.activeElement === document.body) top.current?.focus({ preventScroll: true });
  }, [session]);
  return (
    <>
      <div class="review-head">
        <h1 ref={top} tabIndex={-1}>
          Review
        </h1>
        <StepsBar app={app} />
      </div>
      <div class="review">
        <div class="review-part">
          <ToCheck app={app} />
          <WeighIn app={app} />
          <NotTaken app={app} />
        </div>
        <div class="review-part">
          <AddEntry app={app} />
          <AllEntries app={app} />
          <TakenOut app={app} />
        </div>
      </div>
    </>
  );
}
