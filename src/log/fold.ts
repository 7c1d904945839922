/** From events to a session. */
import type { LogEvent } from "./event.ts";
import { comparePlaces } from "./order.ts";
import { revise, unrevised } from "./revision.ts";
import type { Session } from "./session.ts";
import { about, isStep, sortSteps } from "./undo.ts";
import { Walk } from "./walk.ts";
import { withdrawalsThatCount } from "./withdrawal.ts";

/**
 * A session kept up to date as its events arrive. The same events in any order, or twice, give the
 * same session. One that comes last and corrects nothing is added in constant time; anything else
 * has the whole walked again, once, when the session is next looked at.
 */
export class SessionFold {
  readonly #id: string;
  readonly #known = new Set<string>();
  readonly #targets = new Set<string>();
  readonly #events: LogEvent[] = [];
  /** Absent while what was added still waits to be walked. */
  #walk: Walk | undefined;
  #session: Session | undefined;
  #walks = 0;

  constructor(id: string) {
    this.#id = id;
  }

  /** Adds an event; one of another session, or one already there, changes nothing. */
  add(event: LogEvent): this {
    if (event.session !== this.#id || this.#known.has(event.id)) return this;
    const targets = about(event);
    const goesOn = targets.length === 0 && !isStep(event);
    if (goesOn && !this.#targets.has(event.id) && this.#walk?.isNext(event)) {
      this.#walk.step(unrevised(event));
    } else {
      this.#walk = undefined;
    }
    this.#known.add(event.id);
    for (const id of targets) this.#targets.add(id);
    this.#events.push(event);
    this.#session = undefined;
    return this;
  }

  addAll(events: Iterable<LogEvent>): this {
    for (const event of events) this.add(event);
    return this;
  }

  /**
   * The session now: a new object after every change, so that a change can be told by identity. Its
   * lists are shared with later ones and grow; keep numbers from an old session, not its lists.
   */
  get session(): Session {
    this.#walk ??= this.#walkAll();
    this.#session ??= this.#walk.session();
    return this.#session;
  }

  /** How often the whole has been walked. */
  get walks(): number {
    return this.#walks;
  }

  #walkAll(): Walk {
    this.#walks += 1;
    const events = this.#events.sort(comparePlaces);
    const withdrawals = withdrawalsThatCount(events);
    const walk = new Walk(this.#id, sortSteps(events, withdrawals));
    for (const revision of revise(events, withdrawals)) walk.step(revision);
    return walk;
  }
}

/** The session that follows from its events; events of other sessions are left aside. */
export function foldSession(id: string, events: Iterable<LogEvent>): Session {
  return new SessionFold(id).addAll(events).session;
}
