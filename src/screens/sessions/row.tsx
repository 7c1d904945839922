import { type Signal, useComputed, useSignal } from "@preact/signals";
import { lasts } from "../../log/lasts.ts";
import type { Digest } from "../../scribe/season/digest.ts";
import type { Season } from "../../scribe/season/season.ts";
import { sessionsWords } from "../../words/sessions.ts";
import type { App } from "../app.ts";
import { dayOf, figuresOf, placeOf } from "./words-of.ts";

const words = sessionsWords.list;

interface RowProps {
  app: App;
  season: Season;
  digest: Digest;
  chosen: Signal<readonly Digest[]>;
}

/** One session, and what can be done with it. */
export function Row({ app, season, digest, chosen }: RowProps) {
  const trouble = useSignal("");
  const { id, toCheck } = digest;
  const day = dayOf(digest);
  const isOpen = useComputed(() => app.session.value.id === id).value;
  const isChosen = chosen.value.some((one) => one.id === id);
  const open = async () => {
    await app.openSession(id);
    location.hash = "#summary";
  };
  const choose = () => {
    chosen.value = isChosen
      ? chosen.value.filter((one) => one.id !== id)
      : [...chosen.value, digest];
  };
  const takeOut = async () => {
    if (isOpen && lasts(app.session.value)) {
      trouble.value = words.runs;
      return;
    }
    chosen.value = [];
    await season.takeOut(digest).catch((cause: Error) => {
      trouble.value = cause.message;
    });
  };
  return (
    <li class="ticket">
      <h3>{day}</h3>
      {placeOf(digest) && <p>{placeOf(digest)}</p>}
      <p>
        <strong>{figuresOf(digest, app.settings.value.weight)}</strong>
        {toCheck > 0 && ` · ${words.toLookAt(toCheck)}`}
      </p>
      <div class="row">
        <Act label={isOpen ? words.openNow : words.open} day={day} onClick={open} isMain />
        {digest.past && (
          <Act
            label={isChosen ? words.chosen : words.compare}
            day={day}
            onClick={choose}
            isPressed={isChosen}
          />
        )}
        <Act label={words.delete} day={day} onClick={takeOut} />
      </div>
      <p role="status" class={trouble.value ? "warn" : "for-ears"}>
        {trouble.value}
      </p>
    </li>
  );
}

interface ActProps {
  label: string;
  day: string;
  onClick: () => void;
  isMain?: boolean;
  isPressed?: boolean;
}

function Act({ label, day, onClick, isMain = false, isPressed }: ActProps) {
  return (
    <button
      type="button"
      class={isMain ? "button button-open" : "button"}
      aria-label={words.label(label, day)}
      {...(isPressed !== undefined && { "aria-pressed": isPressed })}
      onClick={onClick}
    >
      {label}
    </button>
  );
}
