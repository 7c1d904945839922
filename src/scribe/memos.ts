import { effect, type ReadonlySignal, signal } from "@preact/signals";
import type { Heard } from "../log/event.ts";
import type { MemoStore } from "../log/memos.ts";
import type { Session } from "../log/session.ts";
import type { LogStore } from "../log/store.ts";
import type { Notebook } from "./notebook.ts";

export interface MemosOptions {
  store: MemoStore;
  /** The angler's own open notebook. */
  notebook: ReadonlySignal<Notebook>;
  log: Pick<LogStore, "subscribeRemovals">;
  /** Whether the angler wants them. A drill has sound brought as well, which is no memo. */
  isOn(): boolean;
}

/** What was heard, and how it sounded. */
export interface SoundOf {
  text: string;
  /** Milliseconds since the epoch. */
  at: number;
  sound: Uint8Array;
}

interface Doubt {
  id: string;
  at: number;
  heard?: Heard;
}

/** An utterance's events are stamped with its time, which the clock may move on a little. */
const SAME_TIME_MS = 1000;

/**
 * Keeps the sound of doubtful lines until they are settled, corrected or taken out, or their session
 * is. Sound is a help and no part of the log: where it can't be stored, nothing is said.
 */
export class Memos {
  /** Entries and lines of the open session that can be listened to. */
  readonly ids: ReadonlySignal<ReadonlySet<string>>;
  readonly #ids = signal<ReadonlySet<string>>(new Set());
  readonly #options: MemosOptions;

  constructor(options: MemosOptions) {
    this.#options = options;
    this.ids = this.#ids;
    options.log.subscribeRemovals((session) => {
      options.store.removeSession(session).catch(passOver);
    });
    effect(() => void this.#open(options.notebook.value));
    effect(() => void this.#clear(options.notebook.value.session.value));
  }

  /** Keeps the sound with what it left in doubt, if anything. */
  async keep({ text, at, sound }: SoundOf): Promise<void> {
    if (!this.#options.isOn()) return;
    const { session } = this.#options.notebook.value;
    const belongs = ({ heard, at: then }: Doubt) =>
      heard?.by === "offline" && heard.text === text && Math.abs(then - at) < SAME_TIME_MS;
    for (const { id } of doubtsOf(session.value).filter(belongs)) {
      try {
        await this.#options.store.put({ id, session: session.value.id, sound });
        this.#ids.value = new Set([...this.#ids.value, id]);
      } catch (cause) {
        passOver(cause);
      }
    }
  }

  sound(id: string): Promise<Uint8Array | undefined> {
    return this.#options.store.sound(id).catch(() => undefined);
  }

  async #open({ id, ready, session }: Notebook): Promise<void> {
    this.#ids.value = new Set();
    const [ids, isRead] = await Promise.all([this.#options.store.ids(id).catch(() => []), ready]);
    // What is in doubt in a session that cannot be read is not known: its sounds stay for then.
    if (!isRead || this.#options.notebook.value.id !== id) return;
    this.#ids.value = new Set([...ids, ...this.#ids.value]);
    await this.#clear(session.value);
  }

  async #clear(session: Session): Promise<void> {
    const doubts = new Set(doubtsOf(session).map(({ id }) => id));
    const settled = [...this.#ids.peek()].filter((id) => !doubts.has(id));
    if (settled.length === 0) return;
    this.#ids.value = new Set([...this.#ids.peek()].filter((id) => doubts.has(id)));
    await this.#options.store.remove(settled).catch(passOver);
  }
}

const doubtsOf = ({ entries, heardLines }: Session): readonly Doubt[] => [
  ...entries.filter(({ verdict }) => verdict === "check"),
  ...heardLines,
];

const passOver = (_cause: unknown): void => {};
