/** What comes from a board and to it by strangers' hands: invitations, and messages of other seats. */
import { goodUntil, invitationHash, readInvitation } from "../../../src/board/invitation.ts";
import { type Message, packed, unpacked } from "../../../src/board/message.ts";
import { BoardPicture } from "../../../src/board/picture/picture.ts";
import type { LogEvent } from "../../../src/log/event.ts";
import { START } from "../../share/days.ts";
import type { Damage } from "./inputs.ts";
import type { Random } from "./mutate.ts";

const INVITATION = {
  address: "wss://board.example:9222",
  board: "osier",
  seat: "peg-1",
  jwt: `x.${btoa(JSON.stringify({ exp: START / 1000 }))}.y`.replaceAll("=", ""),
  seed: `SU${"A".repeat(56)}`,
};

/** Whether it is an invitation; throws where reading it does anything but say so. */
export async function tryInvitation(
  _events: readonly LogEvent[],
  damage: Damage,
): Promise<boolean> {
  const link = damage(`https://app.example/${invitationHash(INVITATION)}`);
  const read = readInvitation(link);
  if (!read) return false;
  goodUntil(read);
  if (!/^wss?:$/.test(new URL(read.address).protocol))
    throw new Error(`Would open ${read.address}`);
  return true;
}

/** Whether every message could be read; throws where the board could not be shown with what came. */
export async function tryMessages(
  events: readonly LogEvent[],
  damage: Damage,
  random: Random,
): Promise<boolean> {
  const picture = new BoardPicture();
  const hurt = Math.floor(random() * (events.length + 1));
  let isWhole = true;
  const receive = (message: Message, place: number) => {
    const text = new TextDecoder().decode(packed(message));
    const came = unpacked(new TextEncoder().encode(place === hurt ? damage(text) : text));
    isWhole &&= came !== undefined;
    const seat = `peg-${place % 3}`;
    const subject = `pegscribe.osier.s.${seat}`;
    picture.receive({ seat, subject, place, at: START + place * 1000 }, came);
  };
  const standing = { name: "Peg one", peg: "1", section: "A" };
  receive({ is: "standing", sentAt: START, session: "s", standing }, 0);
  for (const [place, event] of events.entries()) {
    receive({ is: "event", sentAt: event.at, event }, place + 1);
  }
  const { rows, damaged } = picture.view(START + 1e7);
  if (damaged > 1 || rows.length > 3) throw new Error("One message harmed others.");
  return isWhole;
}
