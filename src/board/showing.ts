/** Tells how a board stands, as news comes in, and no oftener than a screen can use. */
import { BoardPicture } from "./picture/picture.ts";
import { type Patch, Teller } from "./picture/teller.ts";
import type { Receive } from "./reader.ts";

/** Often enough to be live, seldom enough for a screen of a thousand rows. */
const TELL_EVERY_MS = 1000;
/** With no news the times since the last fish still grow. */
const TELL_AGAIN_MS = 10_000;

export class Showing {
  #picture = new BoardPicture();
  #teller = new Teller(this.#picture);
  readonly #seat: string;
  readonly #tell: (patch: Patch) => void;
  #timer: ReturnType<typeof setInterval> | undefined;
  #hasNews = true;
  #toldAt = 0;

  /** @param seat this phone's own: what it wrote tells how far its clock is from the board's */
  constructor(seat: string, tell: (patch: Patch) => void) {
    this.#seat = seat;
    this.#tell = tell;
  }

  readonly receive: Receive = (from, message) => {
    this.#picture.receive(from, message);
    this.#hasNews = true;
  };

  /** It is another board; nothing of the one before is on it. */
  forget(): void {
    this.end();
    this.#picture = new BoardPicture();
  }

  /** From now on the view is whole; it is told all of it once. */
  begin(): void {
    this.end();
    this.#teller = new Teller(this.#picture);
    this.#show();
    this.#timer = setInterval(() => this.#look(), TELL_EVERY_MS);
  }

  /** Until it begins again. */
  end(): void {
    clearInterval(this.#timer);
  }

  #look(): void {
    if (this.#hasNews || Date.now() - this.#toldAt >= TELL_AGAIN_MS) this.#show();
  }

  #show(): void {
    this.#hasNews = false;
    this.#toldAt = Date.now();
    this.#tell(this.#teller.tell(this.#toldAt + (this.#picture.aheadOf(this.#seat) ?? 0)));
  }
}
