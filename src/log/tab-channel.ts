import * as v from "valibot";
import { eventSchema, type LogEvent } from "./event.ts";
import type { EventListener, RemovalListener } from "./store.ts";

const messageSchema = v.union([v.array(eventSchema), v.object({ removed: v.string() })]);

/** Carries new events, and word of sessions taken out, between the tabs of one browser, where it has a way to. */
export class TabChannel {
  readonly #channel: BroadcastChannel | undefined;

  /** The listeners are told of what other tabs send; a tab of another version may send anything. */
  constructor(name: string, onEvents: EventListener, onRemoved: RemovalListener) {
    if (typeof BroadcastChannel === "undefined") return;
    this.#channel = new BroadcastChannel(name);
    this.#channel.onmessage = ({ data }) => {
      const message = v.safeParse(messageSchema, data);
      if (!message.success) return;
      if ("removed" in message.output) onRemoved(message.output.removed);
      else onEvents(message.output);
    };
  }

  send(events: readonly LogEvent[]): void {
    this.#channel?.postMessage(events);
  }

  sendRemoved(session: string): void {
    this.#channel?.postMessage({ removed: session });
  }

  close(): void {
    this.#channel?.close();
  }
}
