/** A new session that begins as another one was. */
import type { Heard, Plan } from "../../log/event.ts";
import { newId } from "../../log/identity.ts";
import type { SetUp } from "../../log/session.ts";
import { type Note, note } from "../notebook.ts";
import type { Digest } from "./digest.ts";

const TOUCHED: Heard = { text: "", by: "touched" };

/** What goes over to another day: not the peg, the times or the notes. */
function planAgain(plan: Plan): Plan {
  const { peg: _peg, startsAt: _from, endsAt: _to, notes: _notes, ...kept } = plan;
  return kept;
}

/** The notes that open such a session; `instead` takes the place of parts of its set-up. */
export function notesLike(
  { plan, setUp }: Pick<Digest, "plan" | "setUp">,
  instead: SetUp = {},
): Note[] {
  const first = { ...setUp, ...instead };
  // A bait of another sort is not what the note on the old one said.
  if (instead.bait !== undefined && instead.bait !== setUp.bait) delete first.baitNote;
  const notes = [note({ kind: "plan", plan: planAgain(plan) }, "log", { heard: TOUCHED })];
  if (Object.keys(first).length === 0) return notes;
  const statement = { kind: "change", ...first } as const;
  const beside = { heard: TOUCHED, group: newId() };
  return [...notes, note({ kind: "entry", statement }, "log", beside)];
}
