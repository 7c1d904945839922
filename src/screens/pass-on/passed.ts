import type { Session } from "../../log/session.ts";
import type { Allowed } from "../../share/allowed.ts";
import type { Summary } from "../../share/summary.ts";
import type { Styles } from "../../share/summary-text.ts";

/** What every form of passing on is made from. */
export interface Passed {
  session: Session;
  summary: Summary;
  /** Milliseconds since the epoch: how far a session that still lasts has got. */
  now: number;
  styles: Styles;
  allowed: Allowed;
}
