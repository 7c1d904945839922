/** Tells from what went wrong why a board does not take or give. */
import { JetStreamApiError } from "@nats-io/jetstream";
import { errors } from "@nats-io/nats-core";
import { goodUntil, type Invitation } from "./invitation.ts";
import type { BoardReason } from "./reasons.ts";

/** The server's own numbers (nats-server, `errors.json`): no such stream, … */
const NO_STREAM = 10_059;
/** … no more room, … */
const NO_ROOM = [10_047, 10_077];
/** … a message above the stream's limit. */
const MESSAGE_TOO_LARGE = 10_054;

/** @param now milliseconds since the epoch; of a credential that is over the server says only that it is wrong */
export function reasonOf(cause: unknown, invitation: Invitation, now: number): BoardReason {
  if (cause instanceof errors.UserAuthenticationExpiredError) return "expired";
  if (cause instanceof errors.AuthorizationError) return whyUnknown(cause, invitation, now);
  if (isNotAllowed(cause)) return "not-allowed";
  if (codeOf(cause) === NO_STREAM) return "gone";
  if (NO_ROOM.includes(codeOf(cause))) return "full";
  return "out-of-reach";
}

/** Whether it is this one message that the board will never take. */
export const isTooLarge = (cause: unknown): boolean =>
  codeOf(cause) === MESSAGE_TOO_LARGE ||
  (cause instanceof errors.InvalidArgumentError && cause.message.includes("max_payload"));

const codeOf = (cause: unknown): number => (cause instanceof JetStreamApiError ? cause.code : 0);

function whyUnknown({ message }: Error, invitation: Invitation, now: number): BoardReason {
  // On a slow network the answer came too late; nothing is wrong with it.
  if (/timeout/i.test(message)) return "out-of-reach";
  return (goodUntil(invitation) ?? Number.POSITIVE_INFINITY) <= now ? "expired" : "refused";
}

const isNotAllowed = (cause: unknown): boolean =>
  cause instanceof errors.PermissionViolationError ||
  (cause instanceof Error && cause.cause instanceof errors.PermissionViolationError);
