/** Going through the session with dry hands: what was doubtful first. */
import "./review.css";
import type { App } from "../app.ts";
import { AddEntry } from "./add-entry.tsx";
import { AllEntries } from "./all-entries.tsx";
import { NotTaken } from "./not-taken.tsx";
import { StepsBar } from "./steps-bar.tsx";
import { TakenOut } from "./taken-out.tsx";
import { ToCheck } from "./to-check.tsx";
import { WeighIn } from "./weigh-in.tsx";

export function Review({ app }: { app: App }) {
  return (
    <>
      <div class="review-head">
        <h1>Review</h1>
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
