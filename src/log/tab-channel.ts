import * as v from "valibot";
import { eventSchema, type LogEvent } from "./event.ts";
import type { EventListener } from "./store.ts";

const messageSchema = v.array(eventSchema);

/** Carries new events between the tabs of one browser, where it has a way to. */
export class TabChannel {
  readonly #channel: BroadcastChannel | undefined;

  /** @param listener is told of what other tabs send; a tab of another version may send anything */
  constructor(name: string, listener: EventListener) {
    if (typeof BroadcastChannel === "undefined") return;
    this.#channel = new BroadcastChannel(name);
    this.#channel.onmessage = ({ data }) => {
      const message = v.safeParse(messageSchema, data);
      if (message.success) listener(message.output);
    };
  }

  send(events: readonly LogEvent[]): void {
    this.#channel?.postMessage(events);
  }

  close(): void {
    this.#channel?.close();
  }
}
