/** An entry's statement while it is being put right. */
import * as v from "valibot";
import { statementSchema } from "../../../grammar/statement.ts";
import { type EntryStatement, isEntryStatement } from "../../log/event.ts";
import { EITHER } from "./fields.ts";

type Fields = Readonly<Record<string, unknown>>;

/**
 * The statement with one field set, or taken away where `value` is undefined. Of a value and a step
 * the one that is set takes the place of the other; another bait is another sort of it.
 */
export function withField(statement: EntryStatement, name: string, value: unknown): EntryStatement {
  const gone = value === undefined ? [name] : [EITHER[name], name === "bait" && "baitNote"];
  const kept = Object.entries(statement as Fields).filter(([one]) => !gone.includes(one));
  const fields = Object.fromEntries(value === undefined ? kept : [...kept, [name, value]]);
  return fields as unknown as EntryStatement;
}

/** The statement if it can be logged as it is, else undefined. */
export function sound(statement: EntryStatement): EntryStatement | undefined {
  const read = v.safeParse(statementSchema, statement);
  return read.success && isEntryStatement(read.output) ? read.output : undefined;
}

/** The statement as another kind of entry, with what both kinds can say. */
export function asKind(statement: EntryStatement, start: EntryStatement): EntryStatement {
  const shared = ["species", "bait", "baitNote", "unit"] as const;
  const fields = statement as Fields;
  const carried = shared.filter((name) => fields[name] !== undefined);
  const changed = { ...start, ...Object.fromEntries(carried.map((name) => [name, fields[name]])) };
  // The schema passes over what the kind does not have.
  return sound(changed as EntryStatement) ?? start;
}
