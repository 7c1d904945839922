/** What goes over the wire: one event, or who sits at the seat. */
import * as v from "valibot";
import { eventSchema } from "../log/event.ts";
import { isPossible, LARGEST } from "../log/possible.ts";
import { standingSchema } from "./membership.ts";

/** The longest message a board takes, in bytes; an event with its longest note stays under it. */
export const MOST_BYTES = 64 * 1024;

const moment = v.pipe(v.number(), v.minValue(0), v.maxValue(LARGEST));

const messageSchema = v.variant("is", [
  v.object({
    is: v.literal("event"),
    /** By the phone's clock when it was sent, milliseconds since the epoch. */
    sentAt: moment,
    /** Of one that can't be, the sums would put everybody's places wrong. */
    event: v.pipe(eventSchema, v.check(isPossible)),
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

/**
 * Letters that don't show and turn round what follows, to the end of the line (UAX #9): with one in a
 * rig's name the board would show the figures behind it backwards.
 */
const TURNING = /[\u202A-\u202E\u2066-\u2069]/g;

const unturned = (_: string, part: unknown): unknown =>
  typeof part === "string" ? part.replace(TURNING, "") : part;

/** Undefined for what is no message of ours. */
export function unpacked(bytes: Uint8Array): Message | undefined {
  if (bytes.length > MOST_BYTES) return undefined;
  try {
    const read = v.safeParse(messageSchema, JSON.parse(new TextDecoder().decode(bytes), unturned));
    return read.success ? read.output : undefined;
  } catch {
    return undefined;
  }
}
