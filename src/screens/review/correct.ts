/** From an entry and what it should have been to the least that says so in the log. */
import * as v from "valibot";
import { type Amendable, amendableSchema, statementSchema } from "../../../grammar/statement.ts";
import { applyAmend } from "../../log/amend.ts";
import { type EntryStatement, isEntryStatement } from "../../log/event.ts";
import type { Entry } from "../../log/session.ts";
import type { App } from "../app.ts";

type Fields = Readonly<Record<string, unknown>>;

/** The statement with one field set, or taken away where `value` is undefined. */
export function withField(statement: EntryStatement, name: string, value: unknown): EntryStatement {
  const { [name]: _before, ...others } = statement as Fields;
  const fields = value === undefined ? others : { ...others, [name]: value };
  return fields as unknown as EntryStatement;
}

/** The statement if it can be logged as it is, else undefined. */
export function sound(statement: EntryStatement): EntryStatement | undefined {
  const read = v.safeParse(statementSchema, statement);
  return read.success && isEntryStatement(read.output) ? read.output : undefined;
}

export type Correction =
  | { by: "nothing" }
  | { by: "amend"; set: Amendable; clear: string[] }
  | { by: "replace"; statement: EntryStatement };

/**
 * Fields that changed, so that a correction of other fields made elsewhere stands beside this one;
 * another reading as a whole, where fields alone cannot say it.
 */
export function correctionOf(before: EntryStatement, after: EntryStatement): Correction {
  const [old, wanted] = [before as Fields, after as Fields];
  const names = [...new Set([...Object.keys(old), ...Object.keys(wanted)])];
  const changed = names.filter((name) => !same(old[name], wanted[name]));
  if (changed.length === 0) return { by: "nothing" };
  const clear = changed.filter((name) => wanted[name] === undefined);
  const set = Object.fromEntries(
    changed.filter((name) => wanted[name] !== undefined).map((name) => [name, wanted[name]]),
  );
  const amendment = v.safeParse(v.strictObject(amendableSchema.entries), set);
  const says = amendment.success && same(applyAmend(before, amendment.output, clear), after);
  return says ? { by: "amend", set: amendment.output, clear } : { by: "replace", statement: after };
}

/**
 * Writes that an entry should have been `after`, at `at`. One that was marked for a look is read
 * anew, which takes the mark off.
 */
export async function correct(app: App, entry: Entry, after: EntryStatement, at: number) {
  const correction = correctionOf(entry.statement, after);
  if (entry.verdict === "check") {
    await (correction.by === "nothing" ? app.settle(entry) : app.replace(entry, after));
  } else if (correction.by === "amend") {
    await app.amend(entry, correction.set, correction.clear);
  } else if (correction.by === "replace") {
    await app.replace(entry, after);
  }
  if (at !== entry.at) await app.moveTo(entry, at);
}

/** Whether two values say the same, in whatever order their fields stand. */
export const same = (one: unknown, other: unknown): boolean => inOrder(one) === inOrder(other);

const inOrder = (value: unknown): string =>
  JSON.stringify(value, (_, part: unknown) =>
    typeof part === "object" && part !== null && !Array.isArray(part)
      ? Object.fromEntries(Object.entries(part).sort(([a], [b]) => (a < b ? -1 : 1)))
      : part,
  ) ?? "undefined";
