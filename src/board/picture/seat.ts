import type { Session } from "../../log/session.ts";
import type { Standing } from "../membership.ts";
import type { Message } from "../message.ts";
import { Fished } from "./fished.ts";

type Stood = Extract<Message, { is: "standing" }>;

/** All that came from one seat. The order in which it came, and repeats, make no difference. */
export class Seat {
  readonly #sessions = new Map<string, Fished>();
  #ahead = Number.POSITIVE_INFINITY;
  #heardAt = Number.NEGATIVE_INFINITY;
  #stood: Stood | undefined;
  #changes = 0;

  /** @param at when the server took it, milliseconds since the epoch */
  take(at: number, message: Message): void {
    this.#changes += 1;
    this.#ahead = Math.min(this.#ahead, at - message.sentAt);
    this.#heardAt = Math.max(this.#heardAt, at);
    if (message.is === "event") this.#fished(message.event.session).add(message.event);
    else if (!this.#stood || isLater(message, this.#stood)) this.#stood = message;
  }

  /**
   * How far the board's clock is ahead of the phone's, milliseconds: the least of what lay between
   * sending and receipt, so that only the quickest way counts. Right to that quickest way's time,
   * for a phone whose clock is not put right on the day.
   */
  get ahead(): number {
    return this.#ahead;
  }

  /** When the server last took something, milliseconds since the epoch. */
  get heardAt(): number {
    return this.#heardAt;
  }

  /** Tells one state of the seat from another. */
  get changes(): number {
    return this.#changes;
  }

  get standing(): Standing | undefined {
    return this.#stood?.standing;
  }

  /** The session begun last; undefined where nothing was logged. */
  get current(): Fished | undefined {
    let current: Fished | undefined;
    for (const one of this.#sessions.values()) {
      if (!current || isNewer(one.session, current.session)) current = one;
    }
    return current;
  }

  #fished(id: string): Fished {
    const known = this.#sessions.get(id);
    if (known) return known;
    const fished = new Fished(id);
    this.#sessions.set(id, fished);
    return fished;
  }
}

/** Of two sent in the same millisecond either may stand, but always the same. */
const isLater = (one: Stood, other: Stood): boolean =>
  one.sentAt === other.sentAt
    ? JSON.stringify(one.standing) > JSON.stringify(other.standing)
    : one.sentAt > other.sentAt;

/** A session that was only prepared is passed over for one that was fished. */
function isNewer(one: Session, other: Session): boolean {
  const [begun, before] = [one, other].map(({ startedAt = Number.NEGATIVE_INFINITY }) => startedAt);
  return begun === before ? one.id > other.id : (begun ?? 0) > (before ?? 0);
}
