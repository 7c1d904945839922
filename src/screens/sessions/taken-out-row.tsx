import { useSignal } from "@preact/signals";
import { useEffect, useRef } from "preact/hooks";
import type { TakenOut } from "../../scribe/season/season.ts";
import { sessionsWords } from "../../words/sessions.ts";
import { dayOf } from "./words-of.ts";

const words = sessionsWords.list;

/** Where a session was that has been deleted, with the way back. */
export function TakenOutRow({ takenOut }: { takenOut: TakenOut }) {
  const trouble = useSignal("");
  const back = useRef<HTMLButtonElement>(null);
  // The button that was pressed is gone: whoever works by keyboard goes on from here.
  useEffect(() => back.current?.focus(), []);
  const bringBack = () =>
    takenOut.bringBack().catch((cause: Error) => {
      trouble.value = cause.message;
    });
  return (
    <li class="ticket taken-out">
      <p>{words.deleted(dayOf(takenOut.digest))}</p>
      <button type="button" class="button" ref={back} onClick={bringBack}>
        {words.putBack}
      </button>
      <p>{words.deletedHint}</p>
      <p role="status" class={trouble.value ? "warn" : "for-ears"}>
        {trouble.value}
      </p>
    </li>
  );
}
