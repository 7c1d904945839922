import { biasFrom, weighedNets } from "../../analysis/weights/bias.ts";
import type { Session } from "../../log/session.ts";
import { climbOf } from "../../share/pictures/climb-of.ts";
import { ClimbPicture } from "../../share/pictures/climb-picture.tsx";
import type { Styles } from "../../share/summary-text.ts";

/** The main chart of a session; nothing before it has started. `now` in milliseconds since the epoch. */
export function chartOf(session: Session, now: number, styles: Styles) {
  const climb = climbOf(session, now, biasFrom(weighedNets([session])));
  return climb && <ClimbPicture of={climb} styles={styles} />;
}
