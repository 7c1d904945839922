/** Joining a shared board, how sending goes, and leaving it. */
import { useEffect, useState } from "preact/hooks";
import { type Invitation, invitationHash, readInvitation } from "../../board/invitation.ts";
import { joinWords as words } from "../../words/join.ts";
import type { App } from "../app.ts";
import { Invited } from "./invited.tsx";
import { Joined } from "./joined.tsx";

export function JoinScreen({ app }: { app: App }) {
  const membership = app.board.membership.value;
  const invitation = useInvitation();
  const isNew = invitation && invitation.jwt !== membership?.invitation.jwt;
  return (
    <>
      <h1>{words.title}</h1>
      {membership && <Joined app={app} membership={membership} />}
      {isNew && <Invited key={invitation.jwt} app={app} invitation={invitation} />}
      {!membership && !isNew && <Paste />}
    </>
  );
}

/** The invitation in the address, which another link may change while the page stays. */
function useInvitation(): Invitation | undefined {
  const [hash, setHash] = useState(location.hash);
  useEffect(() => {
    const follow = () => setHash(location.hash);
    addEventListener("hashchange", follow);
    return () => removeEventListener("hashchange", follow);
  }, []);
  return readInvitation(hash);
}

function Paste() {
  const [isBroken, setBroken] = useState(readsBroken());
  const open = (link: string) => {
    const invitation = readInvitation(link);
    setBroken(invitation === undefined && link !== "");
    if (invitation) location.hash = invitationHash(invitation);
  };
  return (
    <section class="ticket">
      <p>{words.about}</p>
      <div class="field">
        <label for="invitation">{words.paste.label}</label>
        <input
          id="invitation"
          class="input"
          type="url"
          autocomplete="off"
          aria-describedby="invitation-hint"
          onInput={(event) => open(event.currentTarget.value.trim())}
        />
        <p id="invitation-hint">{words.paste.hint}</p>
      </div>
      <p class="warn" role="status">
        {isBroken && words.paste.broken}
      </p>
    </section>
  );
}

/** Whether the page was opened by what only looks like an invitation. */
const readsBroken = () =>
  location.hash.includes("?") && readInvitation(location.hash) === undefined;
