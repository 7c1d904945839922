/** What goes over the wire: one event, or who stands at the seat; nothing the angler did not allow. */
import * as v from "valibot";
import { type EventBody, eventSchema, type LogEvent } from "../log/event.ts";
import { type Shares, standingSchema } from "./membership.ts";

/** The longest message a board takes, in bytes; an event with its longest note stays under it. */
export const MOST_BYTES = 64 * 1024;

const moment = v.pipe(v.number(), v.finite());

const messageSchema = v.variant("is", [
  v.object({
    is: v.literal("event"),
    /** By the phone's clock when it was sent, milliseconds since the epoch. */
    sentAt: moment,
    event: eventSchema,
  }),
  v.object({
    is: v.literal("standing"),
    sentAt: moment,
    session: v.pipe(v.string(), v.minLength(1), v.maxLength(64)),
    standing: standingSchema,
  }),
]);

export type Message = v.InferOutput<typeof messageSchema>;

export const packed = (message: Message): Uint8Array =>
  new TextEncoder().encode(JSON.stringify(message));

/** Undefined for what is no message of ours. */
export function unpacked(bytes: Uint8Array): Message | undefined {
  if (bytes.length > MOST_BYTES) return undefined;
  try {
    const read = v.safeParse(messageSchema, JSON.parse(new TextDecoder().decode(bytes)));
    return read.success ? read.output : undefined;
  } catch {
    return undefined;
  }
}

/** The event as the board may see it; undefined where it may see nothing of it. */
export function shownEvent(event: LogEvent, shares: Shares): LogEvent | undefined {
  const { heard, ...unheard } = event;
  if (event.body.kind === "heard") return shares.heard ? event : undefined;
  const body = shares.notes ? event.body : withoutNotes(event.body);
  if (!body) return undefined;
  return shares.heard && heard ? { ...unheard, heard, body } : { ...unheard, body };
}

/** A body with no note in it; undefined where it was nothing else. */
function withoutNotes(body: EventBody): EventBody | undefined {
  switch (body.kind) {
    case "entry":
    case "replace":
      return body.statement.kind === "note" ? undefined : body;
    case "plan": {
      const { notes: _, ...plan } = body.plan;
      return { ...body, plan };
    }
    default:
      return body;
  }
}
