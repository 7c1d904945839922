/** From an entry as it is and as it should have been to the least that says so in the log. */
import * as v from "valibot";
import { type Amendable, amendableSchema } from "../../grammar/statement.ts";
import { applyAmend } from "./amend.ts";
import type { EntryStatement } from "./event.ts";

export type Correction =
  | { by: "nothing" }
  | { by: "amend"; set: Amendable; clear: string[] }
  | { by: "replace"; statement: EntryStatement };

type Fields = Readonly<Record<string, unknown>>;

/**
 * Fields that changed, so that a correction of other fields made elsewhere stands beside this one;
 * another reading as a whole, where fields alone cannot say it.
 */
export function correctionOf(before: EntryStatement, after: EntryStatement): Correction {
  const [old, wanted] = [before as Fields, after as Fields];
  const changed = changedFields(before, after);
  if (changed.length === 0) return { by: "nothing" };
  const clear = changed.filter((name) => wanted[name] === undefined);
  const set = Object.fromEntries(
    changed.filter((name) => wanted[name] !== undefined).map((name) => [name, wanted[name]]),
  );
  const amendment = v.safeParse(v.strictObject(amendableSchema.entries), set);
  const says = amendment.success && same(applyAmend(old as EntryStatement, set, clear), after);
  return says ? { by: "amend", set: amendment.output, clear } : { by: "replace", statement: after };
}

/** The names of the fields in which two statements differ; the kind is one of them. */
export function changedFields(before: EntryStatement, after: EntryStatement): string[] {
  const [old, wanted] = [before as Fields, after as Fields];
  const names = [...new Set([...Object.keys(old), ...Object.keys(wanted)])];
  return names.filter((name) => !same(old[name], wanted[name]));
}

/** Whether two values say the same, in whatever order their fields stand. */
export const same = (one: unknown, other: unknown): boolean => inOrder(one) === inOrder(other);

const inOrder = (value: unknown): string =>
  JSON.stringify(value, (_, part: unknown) =>
    typeof part === "object" && part !== null && !Array.isArray(part)
      ? Object.fromEntries(Object.entries(part).sort(([a], [b]) => (a < b ? -1 : 1)))
      : part,
  ) ?? "undefined";
