/** What can go wrong with storing, and what to do about it. */
import { storingWords } from "../words/storing.ts";

export type StoreReason =
  | "quota"
  | "refused"
  | "closed"
  | "blocked"
  | "aborted"
  | "slow"
  | "unknown";

const ADVICE: Readonly<Record<StoreReason, string>> = storingWords;

/** Storing failed; the message is a sentence for the angler. */
export class StoreTrouble extends Error {
  override readonly name = "StoreTrouble";
  readonly reason: StoreReason;

  constructor(reason: StoreReason, cause?: unknown) {
    super(ADVICE[reason], { cause });
    this.reason = reason;
  }
}

/** Names of DOMException, as the Indexed Database API 3.0 and the File API give them. */
const REASONS: Readonly<Record<string, StoreReason>> = {
  QuotaExceededError: "quota",
  SecurityError: "refused",
  NotAllowedError: "refused",
  InvalidStateError: "closed",
  TransactionInactiveError: "closed",
  VersionError: "blocked",
  AbortError: "aborted",
};

/** Any failure as a trouble. */
export function toTrouble(cause: unknown): StoreTrouble {
  if (cause instanceof StoreTrouble) return cause;
  const name = cause instanceof Error || cause instanceof DOMException ? cause.name : "";
  return new StoreTrouble(REASONS[name] ?? "unknown", cause);
}
