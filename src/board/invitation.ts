/** What lets one phone onto a board: where it is, which seat is its own, and the proof of that. */
import * as v from "valibot";

/** What may stand between the dots of a NATS subject, and in a stream's name. */
const token = v.pipe(v.string(), v.regex(/^[a-z0-9][a-z0-9-]{0,39}$/));

const address = v.pipe(
  v.string(),
  v.maxLength(300),
  v.check((text) => URL.canParse(text) && /^wss?:$/.test(new URL(text).protocol)),
);

const invitationSchema = v.object({
  /** A WebSocket's address, `wss:` but for trials on one machine. */
  address,
  board: token,
  /** The seat on the board, which alone the credential may write to. A reader's seat writes nothing. */
  seat: token,
  /** The credential: a signed statement of what it allows and how long (a NATS user JWT), and its key's seed. */
  jwt: v.pipe(v.string(), v.regex(/^[\w-]+\.[\w-]+\.[\w-]+$/), v.maxLength(4000)),
  seed: v.pipe(v.string(), v.regex(/^SU[A-Z2-7]{56}$/)),
});

export type Invitation = v.InferOutput<typeof invitationSchema>;

/** How an invitation's part of an address begins. */
export const JOIN_HASH = "#join?";

/** The part of the app's address that carries the invitation; it never reaches a server. */
export const invitationHash = (invitation: Invitation): string =>
  JOIN_HASH + new URLSearchParams({ ...invitation });

/** Reads a link, or the part behind its `#`; undefined where it is no invitation, or not whole. */
export function readInvitation(link: string): Invitation | undefined {
  const from = link.indexOf(JOIN_HASH);
  if (from < 0) return undefined;
  const fields = new URLSearchParams(link.slice(from + JOIN_HASH.length).trim());
  const read = v.safeParse(invitationSchema, Object.fromEntries(fields));
  return read.success ? read.output : undefined;
}

const claimsSchema = v.object({ exp: v.optional(v.number()) });

/** Until when the credential is good, milliseconds since the epoch; undefined for one without an end. */
export function goodUntil({ jwt }: Invitation): number | undefined {
  try {
    const claims = (jwt.split(".")[1] ?? "").replaceAll("-", "+").replaceAll("_", "/");
    const { exp } = v.parse(claimsSchema, JSON.parse(atob(claims)));
    return exp === undefined ? undefined : exp * 1000;
  } catch {
    return undefined;
  }
}
