/** The log out of the phone and into it. What does the work is fetched when it is first wanted. */
import type { LogEvent } from "../log/event.ts";
import type { LogStore } from "../log/store.ts";
import type { LogFile, LogForm } from "./log-files.ts";
import type { TakenIn } from "./take-in.ts";

export interface PassOn {
  /** @param whole every session and the settings, or the open session alone */
  logFile(form: LogForm, whole: boolean): Promise<LogFile>;
  /**
   * Takes in all of a file, or nothing.
   * @throws Refusal or StoreTrouble, whose messages are for the angler
   */
  takeIn(file: Blob): Promise<TakenIn>;
  /** Lets these sessions be taken in again, though they were taken out here. */
  readmit(sessions: readonly string[]): Promise<void>;
  /** Sets this phone as another one was, as far as it makes sense here. */
  takeSettings(kept: unknown): void;
}

interface Desk {
  store: LogStore;
  keeper: { keeping: { unsaved: readonly LogEvent[] } };
}

export interface PassOnOptions {
  /** The angler's own, which files are taken in at. */
  own: Desk;
  /** Where the open session is: the angler's own, or the sample's. */
  open(): Desk & { session: { value: { id: string } } };
  /** Milliseconds since the epoch. */
  now(): number;
  /** How this phone is set. */
  settings(): unknown;
  takeSettings(kept: unknown): void;
}

export function makePassOn(options: PassOnOptions): PassOn {
  const { own, open, now, settings, takeSettings } = options;
  return {
    async logFile(form, whole) {
      const { logFile } = await import("./log-files.ts");
      const { store, keeper } = whole ? own : open();
      const { unsaved } = keeper.keeping;
      const extent = whole ? { settings: settings() } : { session: open().session.value.id };
      return logFile(form, { store, unsaved, now: now(), ...extent });
    },
    async takeIn(file) {
      const { takeIn } = await import("./take-in.ts");
      return takeIn(own.store, file);
    },
    readmit: (sessions) => own.store.readmit(sessions),
    takeSettings,
  };
}
