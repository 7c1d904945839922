import type { PastSession } from "../analysis/seasons/past.ts";
import { type Bias, biasFrom, weighedNets } from "../analysis/weights/bias.ts";
import type { Session } from "../log/session.ts";

/** How the angler judges, after the weighed nets of earlier sessions and of this one. */
export const biasAfter = (past: readonly PastSession[], session: Session): Bias =>
  biasFrom([
    ...past.filter(({ id }) => id !== session.id).flatMap(({ nets }) => nets),
    ...weighedNets([session]),
  ]);
