import type { Session } from "./session.ts";

/** Whether it has begun and is not over. */
export const lasts = ({ state }: Pick<Session, "state">): boolean =>
  state === "fishing" || state === "paused";
