/** That this phone is on a board, and what its angler wants seen there. Kept beside the log. */
import * as v from "valibot";
import { type Invitation, invitationHash, readInvitation } from "./invitation.ts";

const name = v.pipe(v.string(), v.trim(), v.minLength(1), v.maxLength(40));

const standingSchema = v.object({
  /** What the angler wants to be called. */
  name,
  peg: v.exactOptional(name),
  /** Where a match is fished in sections. */
  section: v.exactOptional(name),
});

/** Who stands in a row of the board. */
export type Standing = v.InferOutput<typeof standingSchema>;
export { standingSchema };

const sharesSchema = v.object({
  notes: v.boolean(),
  /** The words as they were heard. */
  heard: v.boolean(),
});

/** What goes out beside the entries themselves. */
export type Shares = v.InferOutput<typeof sharesSchema>;

export interface Membership {
  invitation: Invitation;
  standing: Standing;
  shares: Shares;
}

/** A membership as this phone keeps it. */
export interface Joined extends Membership {
  /** When this phone joined, by its own clock in milliseconds since the epoch. */
  since: number;
  /** The session that was open then. */
  session: string;
}

const joinedSchema = v.object({
  invitation: v.pipe(
    v.string(),
    v.transform((hash) => readInvitation(hash)),
    v.check((invitation) => invitation !== undefined),
    v.transform((invitation) => invitation as Invitation),
  ),
  standing: standingSchema,
  shares: sharesSchema,
  since: v.number(),
  session: v.string(),
});

/** As it is stored. */
export const keptJoined = ({ invitation, ...rest }: Joined): unknown => ({
  ...rest,
  invitation: invitationHash(invitation),
});

/** Undefined where nothing is kept, or nothing that makes sense. */
export function readJoined(kept: unknown): Joined | undefined {
  const read = v.safeParse(joinedSchema, kept);
  return read.success ? read.output : undefined;
}
