/** The page's side of a shared board: who is on it, and the worker that sends and reads. */
import { type Joined, keptJoined, type Membership, readJoined } from "../../board/membership.ts";
import { patched } from "../../board/picture/teller.ts";
import type { BoardView } from "../../board/picture/view.ts";
import { type BoardReason, isLasting } from "../../board/reasons.ts";
import type { FromBoard, ToBoard } from "../../board/talk.ts";
import type { Outbox } from "../../log/outbox.ts";
import { joinWords } from "../../words/join.ts";
import type { BoardSignals } from "./later-board.ts";
import type { Reading, Sending } from "./news.ts";

type Hired = Pick<Worker, "postMessage" | "terminate" | "onmessage" | "onerror">;

export interface SharedBoardOptions {
  shown: BoardSignals;
  outbox: Outbox;
  /** The angler's own session that is open. Never fails. */
  session(): Promise<string>;
  /** Runs `board-worker.ts`. */
  hire(): Hired;
}

export class SharedBoard {
  readonly #options: SharedBoardOptions;
  #worker: Hired | undefined;
  #joined: Joined | undefined;
  #followers = 0;
  /** As the board looked last, while it is followed. */
  #view: BoardView | undefined;

  constructor(options: SharedBoardOptions) {
    this.#options = options;
  }

  /** Looks whether the phone is on a board, which another tab may have changed. Never fails. */
  async goOn(): Promise<void> {
    const kept = await this.#options.outbox.joined().catch(() => "unknown");
    if (kept === "unknown") return;
    const joined = readJoined(kept);
    const isKnown = joined?.since === this.#joined?.since;
    if (isKnown && this.#worker) this.hurry();
    else if (joined || !isKnown) this.#begin(joined);
  }

  async join(membership: Membership): Promise<void> {
    const session = await this.#options.session();
    const joined: Joined = { ...membership, since: Date.now(), session };
    await this.#change(joined, (outbox) => outbox.join(keptJoined(joined), session));
  }

  /** What waits is dropped; what the board has, it keeps. */
  async leave(): Promise<void> {
    await this.#change(undefined, (outbox) => outbox.leave());
  }

  /** Reads the board until the returned function is called. */
  follow(): () => void {
    this.#followers += 1;
    if (this.#followers === 1) this.#tell({ do: "follow", isOn: true });
    let isOver = false;
    return () => {
      if (isOver) return;
      isOver = true;
      this.#followers -= 1;
      if (this.#followers > 0) return;
      this.#tell({ do: "follow", isOn: false });
      this.#options.shown.reading.value = { is: "off" };
    };
  }

  /** Something was logged. */
  look(): void {
    this.#tell({ do: "look" });
  }

  /** The network is back. */
  hurry(): void {
    this.#tell({ do: "hurry" });
  }

  /** Nothing is sent meanwhile; what could not be kept changes nothing. */
  async #change(to: Joined | undefined, keep: (outbox: Outbox) => Promise<void>): Promise<void> {
    this.#stop();
    try {
      await keep(this.#options.outbox);
    } catch (cause) {
      this.#begin(this.#joined);
      throw cause;
    }
    this.#begin(to);
  }

  #begin(joined: Joined | undefined): void {
    this.#stop();
    const { shown, hire } = this.#options;
    this.#joined = joined;
    shown.membership.value = joined;
    shown.reading.value = { is: "off" };
    shown.sending.value = { is: joined ? "opening" : "off" };
    if (!joined) return;
    const worker = hire();
    this.#worker = worker;
    worker.onmessage = ({ data }: MessageEvent<FromBoard>) => this.#hear(data);
    // It did not arrive, or fell over: another is hired when the page is next looked at.
    worker.onerror = () => {
      this.#stop();
      this.#hear({ is: "sending", waiting: 0, tooLarge: 0, trouble: "out-of-reach" });
    };
    this.#tell({ do: "begin", joined: keptJoined(joined) });
    if (this.#followers > 0) this.#tell({ do: "follow", isOn: true });
  }

  #stop(): void {
    this.#worker?.terminate();
    this.#worker = undefined;
    this.#view = undefined;
  }

  #tell(message: ToBoard): void {
    this.#worker?.postMessage(message);
  }

  #hear(news: FromBoard): void {
    const { shown } = this.#options;
    if (news.is === "left") this.#begin(undefined);
    else if (news.is === "sending") shown.sending.value = sendingOf(news);
    else shown.reading.value = this.#readingOf(news);
  }

  #readingOf(news: Exclude<FromBoard, { is: "sending" | "left" }>): Reading {
    if (news.is === "opening") {
      this.#view = undefined;
      return { is: "opening" };
    }
    if (news.is === "news") {
      this.#view = patched(this.#view, news.patch);
      return { is: "live", view: this.#view };
    }
    const why = whyOf(news.trouble);
    return why ? { is: "refused", why } : { is: "out-of-reach", view: this.#view };
  }
}

function sendingOf(news: Extract<FromBoard, { is: "sending" }>): Sending {
  const { waiting, tooLarge, trouble } = news;
  if (!trouble) return { is: "going", waiting, tooLarge };
  const why = whyOf(trouble);
  return why ? { is: "refused", waiting, why } : { is: "out-of-reach", waiting };
}

const whyOf = (trouble: BoardReason): string | undefined =>
  isLasting(trouble) ? joinWords.refused[trouble] : undefined;
