/** Which session is open, so that the next start goes on with it. */
import type { Written } from "../log/device.ts";
import { newId } from "../log/identity.ts";
import { inTime } from "../log/patience.ts";
import type { LogStore } from "../log/store.ts";
import type { SmallStore } from "./small-store.ts";

/** Alone on its line, as versions of before read it too. */
const SESSION = "session";
/** Which session was opened, and after what that was written here. */
const OPENED = "opened";

/**
 * A note of the session that was opened last. It can be read before anything else, but browsers
 * write it to the disk some seconds late, or never if they are killed. The log itself says what was
 * written last, and where: the note holds unless that is something else than when it was made.
 */
export class OpenNote {
  readonly #store: Pick<LogStore, "lastWritten" | "removals">;
  readonly #small: SmallStore;
  /** The noted session, or a new one. */
  readonly session: string;

  constructor(store: Pick<LogStore, "lastWritten" | "removals">, small: SmallStore) {
    this.#store = store;
    this.#small = small;
    this.session = small.get(SESSION) ?? newId();
    small.set(SESSION, this.session);
  }

  /** The session to go on with; where the log cannot tell in time, the noted one. Never fails. */
  async settle(): Promise<string> {
    const { session } = this;
    const asNoted = this.#small.get(OPENED);
    try {
      const [wrote, removed] = await inTime(() =>
        Promise.all([this.#store.lastWritten(), this.#store.removals()]),
      );
      const last = wrote && asNoted !== line(session, wrote) ? wrote.session : session;
      return removed.includes(last) ? newId() : last;
    } catch {
      return session;
    }
  }

  /** Notes that a session was opened. */
  opened(session: string): void {
    this.#small.set(SESSION, session);
    this.#store.lastWritten().then(
      (wrote) => this.#small.set(OPENED, line(session, wrote)),
      // Without it, what was written last will decide.
      () => {},
    );
  }
}

const line = (session: string, wrote: Written | undefined): string =>
  JSON.stringify([session, wrote?.event ?? null]);
