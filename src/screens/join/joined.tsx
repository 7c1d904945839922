import { useState } from "preact/hooks";
import { isForWatching } from "../../board/subjects.ts";
import { joinWords as words } from "../../words/join.ts";
import type { Membership, Sending } from "../app/board.ts";
import type { App } from "../app.ts";

/** The board this phone is on, how sending goes, and the way off it. */
export function Joined({ app, membership }: { app: App; membership: Membership }) {
  const { invitation, standing } = membership;
  const isWatching = isForWatching(invitation.seat);
  const [isNotDone, setNotDone] = useState(false);
  const leave = () => app.board.leave().catch(() => setNotDone(true));
  const { title, as, watching, look, afterwards } = words.joined;
  return (
    <section class="ticket" id="joined">
      <h2>{title(invitation.board)}</h2>
      <p>{isWatching ? watching : as(standing.name, invitation.seat)}</p>
      {!isWatching && <SendingLines sending={app.board.sending.value} />}
      <a class="button button-main" href="#board">
        {look}
      </a>
      <button type="button" class="button" onClick={leave}>
        {words.joined.leave}
      </button>
      <p>{afterwards}</p>
      <p class="warn" role="status">
        {isNotDone && words.notDone}
      </p>
    </section>
  );
}

function SendingLines({ sending }: { sending: Sending }) {
  return (
    <div role="status">
      {sendingLines(sending).map((line) => (
        <p key={line}>{line}</p>
      ))}
    </div>
  );
}

function sendingLines(sending: Sending): string[] {
  const { all, waiting, outOfReach, tooLarge, waits } = words.sending;
  switch (sending.is) {
    case "off":
      return [];
    case "opening":
      return [words.sending.opening];
    case "going": {
      const onTheWay = sending.waiting - sending.tooLarge;
      const way = onTheWay === 0 ? all : waiting(onTheWay);
      return sending.tooLarge === 0 ? [way] : [way, tooLarge(sending.tooLarge)];
    }
    case "out-of-reach":
      return [outOfReach(sending.waiting)];
    case "refused":
      return [sending.why, waits(sending.waiting)].filter(Boolean);
  }
}
