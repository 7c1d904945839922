/** What the screens can do with the log as files. */
export type { LogFile, LogForm } from "../../share/log-files.ts";
export type { PassOn } from "../../share/pass-on.ts";
export type { TakenIn, TakenLog } from "../../share/take-in.ts";
