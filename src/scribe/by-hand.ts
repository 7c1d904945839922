/** Corrections by touch. Each is one write, so that one undo takes it back. */
import type { EntryStatement, EventBody, Plan } from "../log/event.ts";
import type { Entry, Net } from "../log/session.ts";
import { added, adopted, corrected, joined, splitByTouch, stepOf, touch } from "./hand-notes.ts";
import type { Note, Notebook } from "./notebook.ts";

/** @param open the notebook that is open at the moment of the touch */
export function byHand(open: () => Notebook) {
  const write = async (notes: readonly Note[]) => {
    if (notes.length > 0) await open().write(notes);
  };
  let turn: Promise<unknown> = Promise.resolve();
  /** A second touch of undo means the step before, not the one that is just being taken back. */
  const inTurn = (step: () => Promise<void>): Promise<void> => {
    const done = turn.then(step);
    turn = done.catch(() => {});
    return done;
  };
  const writeOne = (body: EventBody) => write([touch()(body)]);

  return {
    /** @param at milliseconds since the epoch; the entry's own where it stays */
    correct: (entry: Entry, statement: EntryStatement, at = entry.at) =>
      write(corrected(entry, statement, at)),

    /** The first part stays in the entry's place, the others follow it. */
    split: (entry: Entry, parts: readonly EntryStatement[]) => write(splitByTouch(entry, parts)),

    /** The statement takes the place of both, where the first stands. */
    join: (first: Entry, second: Entry, statement: EntryStatement) =>
      write(joined(first, second, statement)),

    withdraw: (entry: Entry) => writeOne({ kind: "withdraw", targets: [entry.id] }),

    restore: (entry: Entry) => write(restored(entry)),

    settle: (entry: Entry) => writeOne({ kind: "settle", target: entry.id }),

    /** The first statement takes the line's place; the others stand beside it, at its time. */
    async adopt(heardId: string, statements: readonly EntryStatement[], at?: number) {
      const line = open().session.value.heardLines.find(({ id }) => id === heardId);
      if (line) await write(adopted(line, statements, at ?? line.at));
    },

    addEntry: (statement: EntryStatement, at: number) => write(added(statement, at)),

    weigh: (net: number, weightG: number) => writeOne({ kind: "weigh", net, weightG }),

    /** Takes back all that the scales said of the net, as undo would: redo brings it back. */
    unweigh: ({ weighedBy = [] }: Net) => writeOne({ kind: "withdraw", targets: [...weighedBy] }),

    setPlan: (plan: Plan) => writeOne({ kind: "plan", plan }),

    undo: () =>
      inTurn(async () => {
        const session = open().session.value;
        const last = session.corrections.at(-1);
        if (last) await writeOne({ kind: "withdraw", targets: stepOf(last, session) });
      }),

    redo: () =>
      inTurn(async () => {
        const last = open().session.value.undone.at(-1);
        if (last) await writeOne({ kind: "withdraw", targets: [last.id] });
      }),
  };
}

/** Brings one entry back, and leaves out what was taken back along with it. */
function restored({ id, history }: Entry): Note[] {
  const write = touch();
  const withdrawals = history.filter(({ body }) => body.kind === "withdraw");
  const others = withdrawals
    .flatMap(({ body }) => (body.kind === "withdraw" ? body.targets : []))
    .filter((target) => target !== id);
  const back = write({ kind: "withdraw", targets: withdrawals.map((one) => one.id) });
  const still = write({ kind: "withdraw", targets: [...new Set(others)] });
  return others.length > 0 ? [back, still] : [back];
}
