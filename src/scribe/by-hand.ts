/** Corrections by touch. Each is one write, so that one undo takes it back. */
import type { Amendable } from "../../grammar/statement.ts";
import type { EntryStatement, Heard, LogEvent, Plan } from "../log/event.ts";
import { newId } from "../log/identity.ts";
import type { Entry } from "../log/session.ts";
import { type Note, type Notebook, note } from "./notebook.ts";

const TOUCHED: Heard = { text: "", by: "touched" };

/** @param open the notebook that is open at the moment of the touch */
export function byHand(open: () => Notebook) {
  const write = async (...notes: Note[]) => {
    await open().write(notes);
  };

  return {
    amend: (entry: Entry, set: Amendable, clear: readonly string[] = []) =>
      write(
        touched({
          kind: "amend",
          target: entry.id,
          set,
          ...(clear.length > 0 && { clear: [...clear] }),
        }),
      ),

    moveTo: (entry: Entry, at: number) => write(moved(entry.id, at)),

    replace: (entry: Entry, statement: EntryStatement) =>
      write(touched({ kind: "replace", target: entry.id, statement })),

    withdraw: (entry: Entry) => write(touched({ kind: "withdraw", targets: [entry.id] })),

    restore: (entry: Entry) => write(...restored(entry)),

    settle: (entry: Entry) => write(touched({ kind: "settle", target: entry.id })),

    /** The first statement takes the line's place; the others stand beside it, at its time. */
    async adopt(heardId: string, statements: readonly EntryStatement[]): Promise<void> {
      const line = open().session.value.heardLines.find(({ id }) => id === heardId);
      const [first, ...others] = statements;
      if (!line || !first) return;
      const group = newId();
      await write(
        touched({ kind: "replace", target: heardId, statement: first }, group),
        ...others.flatMap((statement) => added(statement, line.at, group, line.heard)),
      );
    },

    addEntry: (statement: EntryStatement, at: number) => write(...added(statement, at, newId())),

    weigh: (net: number, weightG: number) => write(touched({ kind: "weigh", net, weightG })),

    setPlan: (plan: Plan) => write(touched({ kind: "plan", plan })),

    async undo(): Promise<void> {
      const last = open().session.value.corrections.at(-1);
      if (last) await write(touched({ kind: "withdraw", targets: touchOf(last, open()) }));
    },

    async redo(): Promise<void> {
      const last = open().session.value.undone.at(-1);
      if (last) await write(touched({ kind: "withdraw", targets: [last.id] }));
    },
  };
}

const touched = (body: Note["body"], group?: string): Note =>
  note(body, "log", { heard: TOUCHED, ...(group !== undefined && { group }) });

const moved = (target: string, at: number, group?: string): Note =>
  touched({ kind: "amend", target, set: {}, at }, group);

/** An entry never said. No event is written into the past, so it is written now and then moved. */
function added(statement: EntryStatement, at: number, group: string, heard = TOUCHED): Note[] {
  const entry = note({ kind: "entry", statement }, "log", { heard, group });
  return [entry, moved(entry.id, at, group)];
}

/** Brings one entry back, and leaves out what was taken back along with it. */
function restored({ id, history }: Entry): Note[] {
  const withdrawals = history.filter(({ body }) => body.kind === "withdraw");
  const others = withdrawals
    .flatMap(({ body }) => (body.kind === "withdraw" ? body.targets : []))
    .filter((target) => target !== id);
  const back = touched({ kind: "withdraw", targets: withdrawals.map((one) => one.id) });
  const still = touched({ kind: "withdraw", targets: [...new Set(others)] });
  return others.length > 0 ? [back, still] : [back];
}

/** All that one touch wrote; of what was said, the one correction. */
function touchOf(last: LogEvent, { session }: Notebook): string[] {
  const { group } = last;
  if (group === undefined || last.heard?.by !== "touched") return [last.id];
  const { entries, corrections } = session.value;
  const same = [...entries, ...corrections].filter((one) => one.group === group);
  return same.map(({ id }) => id);
}
