/** A board's invitations: made once, kept in its folder, shown as links and codes. */
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { renderUnicodeCompact } from "uqr";
import {
  goodUntil,
  type Invitation,
  invitationHash,
  readInvitation,
} from "../../../src/board/invitation.ts";
import { qrCode } from "../../../src/share/qr.ts";

/** A seat's place in the file, or none yet. */
type Kept = Readonly<Record<string, string>>;

/** The invitations of these seats; those kept and still good are not made anew. */
export async function invitationsOf(
  folder: string,
  seats: readonly string[],
  address: string,
  make: (seat: string) => Promise<Invitation>,
): Promise<Invitation[]> {
  const file = join(folder, "invitations.json");
  const kept: Kept = existsSync(file) ? JSON.parse(readFileSync(file, "utf8")) : {};
  const invitations: Invitation[] = [];
  for (const seat of seats) {
    const known = readInvitation(kept[seat] ?? "");
    const isGood = known?.address === address && (goodUntil(known) ?? 0) > Date.now();
    invitations.push(isGood ? known : await make(seat));
  }
  const all = invitations.map((one) => [one.seat, invitationHash(one)]);
  const text = JSON.stringify({ ...kept, ...Object.fromEntries(all) }, null, 2);
  writeFileSync(file, text, { mode: 0o600 });
  return invitations;
}

export const linkOf = (app: string, invitation: Invitation): string =>
  new URL(invitationHash(invitation), app).href;

/** The code in letters, as wide as it has to be. */
export const printedCode = (link: string): string =>
  renderUnicodeCompact(link, { ecc: "L", border: 2 });

/** A sheet to print and cut up: a code a seat. */
export function sheet(board: string, app: string, invitations: readonly Invitation[]): string {
  const cards = invitations.map((one) => card(board, one, linkOf(app, one)));
  return `<!doctype html>
<html lang="en-GB">
<meta charset="utf-8">
<title>Board “${board}”: invitations</title>
<style>
  body { font-family: sans-serif; }
  section { break-inside: avoid; border: 1px dashed; padding: 1em; margin: 0 0 1em; }
  svg { width: 8cm; height: 8cm; background: #fff; }
</style>
${cards.join("\n")}
</html>
`;
}

function card(board: string, { seat }: Invitation, link: string): string {
  const code = qrCode(link);
  const picture = code
    ? `<svg viewBox="0 0 ${code.size} ${code.size}"><path d="${code.path}"/></svg>`
    : "";
  const href = link.replaceAll("&", "&amp;");
  return `<section><h2>${board}, ${seat}</h2>${picture}<p><a href="${href}">Open on this phone</a></p></section>`;
}
