/** Why a board does not take or give, as far as that can be told. */
import { JetStreamApiError } from "@nats-io/jetstream";
import { errors } from "@nats-io/nats-core";
import { goodUntil, type Invitation } from "./invitation.ts";

/** Reasons that time alone does not mend: they are tried again seldom, and said plainly. */
export const LASTING = ["refused", "expired", "not-allowed", "full", "gone"] as const;
export type LastingReason = (typeof LASTING)[number];

/** `out-of-reach` is everything that passes: no network, a server that starts anew, a slow answer. */
export type BoardReason = LastingReason | "out-of-reach";

export const isLasting = (reason: BoardReason): reason is LastingReason =>
  reason !== "out-of-reach";

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
