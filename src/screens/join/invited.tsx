import { useState } from "preact/hooks";
import { goodUntil, type Invitation } from "../../board/invitation.ts";
import { isForWatching } from "../../board/subjects.ts";
import { Tick } from "../../ui/choices.tsx";
import { formatClock } from "../../ui/format.ts";
import { formatDay } from "../../ui/format-day.ts";
import { TextField } from "../../ui/text-field.tsx";
import { joinWords as words } from "../../words/join.ts";
import type { Shares, Standing } from "../app/board.ts";
import type { App } from "../app.ts";

interface Draft {
  name: string;
  peg: string;
  section: string;
  shares: Shares;
}

/** What an invitation asks, and what comes of taking it. Nothing is sent before. */
export function Invited({ app, invitation }: { app: App; invitation: Invitation }) {
  const before = app.board.membership.peek()?.standing;
  const [draft, setDraft] = useState<Draft>({
    name: before?.name ?? "",
    peg: app.session.peek().plan.peg ?? "",
    section: "",
    shares: { notes: false, heard: false },
  });
  const [isNotDone, setNotDone] = useState(false);
  const isWatching = isForWatching(invitation.seat);
  const join = async () => {
    try {
      await app.board.join({ invitation, ...membershipOf(draft, invitation) });
      // The credential need not stay in sight.
      history.replaceState(null, "", "#join");
    } catch {
      setNotDone(true);
    }
  };
  const isReady = isWatching || draft.name.trim() !== "";
  const isOver = (goodUntil(invitation) ?? Number.POSITIVE_INFINITY) <= app.now.value;
  return (
    <section class="ticket" id="invited">
      <h2>{words.invited.title}</h2>
      <Where app={app} invitation={invitation} isOver={isOver} />
      {!isOver && !isWatching && <Standings draft={draft} change={setDraft} />}
      {!isOver && isWatching && <p>{words.invited.toWatch}</p>}
      {!isOver && (
        <button type="button" class="button button-main" disabled={!isReady} onClick={join}>
          {isWatching ? words.watch : words.join}
        </button>
      )}
      {!isOver && !isReady && <p>{words.needsName}</p>}
      <p class="warn" role="status">
        {isNotDone && words.notDone}
      </p>
    </section>
  );
}

interface WhereProps {
  app: App;
  invitation: Invitation;
  isOver: boolean;
}

function Where({ app, invitation, isOver }: WhereProps) {
  const { to, sendsTo, readsFrom, until, instead, unsafe } = words.invited;
  const { protocol, host } = new URL(invitation.address);
  const ends = goodUntil(invitation);
  const old = app.board.membership.value?.invitation.board;
  return (
    <>
      <p>{to(invitation.board, invitation.seat)}</p>
      <p>{isForWatching(invitation.seat) ? readsFrom(host) : sendsTo(host)}</p>
      {protocol === "ws:" && <p class="warn">{unsafe}</p>}
      {isOver && <p class="warn">{words.invited.isOver}</p>}
      {ends !== undefined && !isOver && <p>{until(formatDay(ends), formatClock(ends))}</p>}
      {old !== undefined && <p class="warn">{instead(old)}</p>}
    </>
  );
}

interface StandingsProps {
  draft: Draft;
  change: (draft: Draft) => void;
}

function Standings({ draft, change }: StandingsProps) {
  const { name, peg, section, shares } = draft;
  const share = (part: Partial<Shares>) => change({ ...draft, shares: { ...shares, ...part } });
  return (
    <>
      <div class="field">
        <label for="board-name">{words.name}</label>
        <input
          id="board-name"
          class="input"
          value={name}
          maxLength={40}
          autocomplete="nickname"
          onInput={({ currentTarget }) => change({ ...draft, name: currentTarget.value })}
        />
      </div>
      <TextField label={words.peg} value={peg} onSave={(text) => change({ ...draft, peg: text })} />
      <TextField
        label={words.section}
        value={section}
        hint={words.sectionHint}
        onSave={(text) => change({ ...draft, section: text })}
      />
      <fieldset class="field">
        <legend>{words.shares.title}</legend>
        <p>{words.shares.always}</p>
        <Tick
          label={words.shares.notes}
          value={shares.notes}
          onChange={(notes) => share({ notes })}
        />
        <Tick
          label={words.shares.heard}
          value={shares.heard}
          onChange={(heard) => share({ heard })}
        />
      </fieldset>
    </>
  );
}

/** As long as a board takes names. */
const LONGEST = 40;

function membershipOf({ name, peg, section, shares }: Draft, { seat }: Invitation) {
  const standing: Standing = {
    name: (name.trim() || seat).slice(0, LONGEST),
    // Of blanks alone, as a plan from elsewhere may have it, no board takes it.
    ...(peg.trim() && { peg: peg.trim().slice(0, LONGEST) }),
    ...(section && { section: section.slice(0, LONGEST) }),
  };
  return { standing, shares };
}
