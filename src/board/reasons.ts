/** Why a board does not take or give. */

/** What time alone does not mend: tried again seldom, and said plainly. */
export type LastingReason = "refused" | "expired" | "not-allowed" | "full" | "gone";

/** `out-of-reach` is everything that passes: no network, a server that starts anew, a slow answer. */
export type BoardReason = LastingReason | "out-of-reach";

export const isLasting = (reason: BoardReason): reason is LastingReason =>
  reason !== "out-of-reach";
