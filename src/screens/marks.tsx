import type { JSX } from "preact";
import type { Route } from "./routes.ts";

/** Drawn on a square of 24, in strokes: a float, a ticked tag, a climb, shot on a line, lines, tags laid on each other, ripples, a phone, a file, an arrow, an arrow out of a door, a microphone, steps, a board on two legs. */
const MARKS: Readonly<Record<Route["id"], JSX.Element>> = {
  live: <path d="M12 2v6m0 0c4 4 4 8 0 13c-4-5-4-9 0-13zM2 14h5m10 0h5" />,
  review: <path d="M4 4h11l5 5v11H4zM8 13l3 3l5-6" />,
  summary: <path d="M3 3v18h18M6 17l4-3l4-1l5-8" />,
  "set-up": <path d="M12 2v20M9 6h6M8 11h8M9.500 16h5M12 20a1 1 0 1 0 .1 0" />,
  more: <path d="M4 6h16M4 12h16M4 18h16" />,
  sessions: <path d="M7 3h14v14M3 7h14v14H3zM6 17l3-3l2 1l3-4" />,
  phrases: <path d="M4 9q3 3 0 6M9 6q6 6 0 12M14 3q9 9 0 18" />,
  settings: <path d="M7 2h10v20H7zM10 18.500h4" />,
  files: <path d="M5 2h9l5 5v15H5zM12 9v9M8.500 14.500L12 18l3.500-3.500" />,
  shared: <path d="M3 12h14M12 6l6 6l-6 6" />,
  board: <path d="M3 4h18v11H3zM6 8h12M6 11.500h8M7 15v6M17 15v6" />,
  join: <path d="M4 4h11v5M4 4v16h11v-5M9 12h12M17 8l4 4l-4 4" />,
  drill: <path d="M9 3h6v9a3 3 0 0 1-6 0zM5 11a7 7 0 0 0 14 0M12 18v4" />,
  guide: <path d="M4 21V11h5V6h5V2h6v19z" />,
};

/** The sign of a screen, for the eyes only: its name always stands beside it. */
export function Mark({ of }: { of: Route["id"] }) {
  return (
    <svg class="mark" viewBox="0 0 24 24" aria-hidden="true">
      {MARKS[of]}
    </svg>
  );
}
