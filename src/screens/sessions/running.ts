import { lasts } from "../../log/lasts.ts";
import type { App } from "../app.ts";

/** Whether the open session has begun and not ended. */
export const isRunning = ({ session }: App): boolean => lasts(session.value);
