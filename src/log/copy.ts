import type { LogEvent } from "./event.ts";

/**
 * A second copy of the log, beside the database. Browsers throw a database away that they find
 * damaged: Chromium did so with one whose last write was cut off by a kill, two starts later.
 * Nothing here fails; what cannot be copied is not.
 */
export interface LogCopy {
  /**
   * Resolves once they are in it, or cannot be.
   * @param device the id of the device that wrote them; absent for those that came from elsewhere
   */
  add(events: readonly LogEvent[], device?: string): Promise<void>;
  remove(session: string): void;
  /** All of it that can be read. */
  read(): Promise<Copied>;
}

export interface Copied {
  /** In no order, some perhaps twice. */
  events: LogEvent[];
  /** The device that wrote into the log here last, once it has. */
  device?: string;
}
