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
  /** The angler's own session that is open. */
  session(): string;
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
    if (joined?.since === this.#joined?.since) this.hurry();
    else this.#begin(joined);
  }

  async join(membership: Membership): Promise<void> {
    const session = this.#options.session();
    const joined: Joined = { ...membership, since: Date.now(), session };
    this.#stop();
    await this.#options.outbox.join(keptJoined(joined), session);
    this.#begin(joined);
  }

  /** What waits is dropped; what the board has, it keeps. */
  async leave(): Promise<void> {
    this.#stop();
    await this.#options.outbox.leave();
    this.#begin(undefined);
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

  #begin(joined: Joined | undefined): void {
    this.#stop();
    const { shown, hire } = this.#options;
    this.#joined = joined;
    shown.membership.value = joined;
    shown.reading.value = { is: "off" };
    shown.sending.value = joined ? { is: "going", waiting: 0, tooLarge: 0 } : { is: "off" };
    if (!joined) return;
    const worker = hire();
    this.#worker = worker;
    worker.onmessage = ({ data }: MessageEvent<FromBoard>) => this.#hear(data);
    worker.onerror = () => this.#hear({ is: "sending", ...NOTHING, trouble: "out-of-reach" });
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

const NOTHING = { waiting: 0, tooLarge: 0 };

function sendingOf(news: Extract<FromBoard, { is: "sending" }>): Sending {
  const { waiting, tooLarge, trouble } = news;
  if (!trouble) return { is: "going", waiting, tooLarge };
  const why = whyOf(trouble);
  return why ? { is: "refused", waiting, why } : { is: "out-of-reach", waiting };
}

const whyOf = (trouble: BoardReason): string | undefined =>
  isLasting(trouble) ? joinWords.refused[trouble] : undefined;
