/** The pictures of the app that a phone shows before it installs it; `draw-screenshots.ts` takes them. */
import type { Route } from "../../../src/screens/routes.ts";
import { appWords } from "../../../src/words/app.ts";

export interface Screenshot {
  /** In `public/`. */
  file: string;
  screen: Route["id"];
  form: "narrow" | "wide";
  label: string;
  /** In pixels of the picture. */
  width: number;
  height: number;
}

const NARROW = { form: "narrow", width: 780, height: 1688 } as const;
const WIDE = { form: "wide", width: 1280, height: 800 } as const;

const { screens } = appWords;

export const SCREENSHOTS: readonly Screenshot[] = [
  { file: "screen-live.png", screen: "live", label: screens.live.about, ...NARROW },
  { file: "screen-review.png", screen: "review", label: screens.review.about, ...NARROW },
  { file: "screen-summary.png", screen: "summary", label: screens.summary.about, ...NARROW },
  { file: "screen-wide.png", screen: "live", label: screens.live.about, ...WIDE },
];
