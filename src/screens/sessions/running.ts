import type { App } from "../app.ts";

/** Whether the open session has begun and not ended. */
export const isRunning = ({ session }: App): boolean =>
  ["fishing", "paused"].includes(session.value.state);
