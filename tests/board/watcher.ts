/** Somebody who reads a board and keeps all that comes. */
import { connectTo } from "../../src/board/connection.ts";
import type { Invitation } from "../../src/board/invitation.ts";
import type { Message } from "../../src/board/message.ts";
import { NatsReader } from "../../src/board/nats-reader.ts";
import type { From } from "../../src/board/reader.ts";
import type { BoardReason } from "../../src/board/reasons.ts";
import type { LogEvent } from "../../src/log/event.ts";
import { nodeSocket } from "../tools/board/node-socket.ts";

export class Watcher {
  readonly said: { from: From; message: Message | undefined }[] = [];
  readonly troubles: BoardReason[] = [];
  /** How often it was told that it has all there was. */
  lives = 0;
  readonly #reader: NatsReader;

  constructor(invitation: Invitation) {
    this.#reader = new NatsReader({
      invitation,
      connect: (one) => connectTo(one, nodeSocket),
      onLive: () => {
        this.lives += 1;
      },
      onTrouble: (reason) => this.troubles.push(reason),
    });
    this.#reader.start((from, message) => this.said.push({ from, message }));
  }

  get events(): LogEvent[] {
    return this.said.flatMap(({ message }) => (message?.is === "event" ? [message.event] : []));
  }

  get ids(): string[] {
    return this.events.map(({ id }) => id);
  }

  get damaged(): number {
    return this.said.filter(({ message }) => message === undefined).length;
  }

  hurry(): void {
    this.#reader.hurry();
  }

  close(): void {
    this.#reader.stop();
  }
}
