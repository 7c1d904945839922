/** What an amendment does to a statement. */
import { type Amendable, type Kind, statementSchema } from "../../grammar/statement.ts";
import type { EntryStatement } from "./event.ts";

type Fields = Record<string, unknown>;

/** The fields of each kind, from the schema itself: "optional", or the type it must have. */
const FIELDS: ReadonlyMap<Kind, ReadonlyMap<string, string>> = new Map(
  statementSchema.options.map(({ entries: { kind, ...entries } }) => [
    kind.literal,
    new Map(Object.entries(entries).map(([name, schema]) => [name, schema.type])),
  ]),
);

const fieldsOf = (kind: Kind): ReadonlyMap<string, string> => FIELDS.get(kind) ?? new Map();

/** Said one way or the other: the new one takes the place of both. */
export const LENGTHS = [
  ["depthMm", "depthByMm"],
  ["distanceMm", "distanceByMm"],
  ["lashMm", "lashByMm"],
] as const;

/**
 * The statement with the fields of `set` put in and those named in `clear` taken out; itself
 * unchanged. Only fields of the statement's own kind are touched, and none that it must have is
 * taken out. A bare length goes to the one length that a change has, and there a step keeps its
 * direction; a bare weight goes to a feed's amount.
 * @param set grams and millimetres, as in the statement
 */
export function applyAmend(
  statement: EntryStatement,
  set: Amendable,
  clear: readonly string[] = [],
): EntryStatement {
  const own = fieldsOf(statement.kind);
  const amended: Fields = { ...statement };
  for (const [name, value] of Object.entries(redirect(statement, set))) {
    if (!own.has(name) || value === undefined) continue;
    makeRoom(amended, name);
    amended[name] = name === "unit" ? { ...(amended.unit ?? {}), ...set.unit } : value;
  }
  if (restates(set) && set.approx === undefined) delete amended.approx;
  for (const name of clear) if (own.get(name) === "optional") delete amended[name];
  return amended as EntryStatement;
}

/**
 * Whether every field of `set` has a place in the statement. A feed takes only what it already
 * states: "make that corn" after a plain "feeding" is about the hook.
 */
export function canTake(statement: EntryStatement, set: Amendable): boolean {
  const own = fieldsOf(statement.kind);
  const names = Object.entries(redirect(statement, set))
    .filter(([name, value]) => value !== undefined && name !== "unit" && name !== "approx")
    .map(([name]) => name);
  const isStated = (name: string) => statement.kind !== "feed" || name in statement;
  return names.length > 0 && names.every((name) => own.has(name) && isStated(name));
}

/** A bare length or weight under the name it has in this statement. */
function redirect(statement: EntryStatement, set: Amendable): Fields {
  const { lengthMm, weightG, ...rest } = set;
  if (statement.kind === "change" && lengthMm !== undefined) {
    const lengths = LENGTHS.flat().filter((name) => statement[name] !== undefined);
    const [name] = lengths;
    if (name === undefined || lengths.length > 1) return set;
    const sign = name.endsWith("ByMm") ? Math.sign(statement[name] ?? 1) : 1;
    return { ...rest, [name]: sign * lengthMm };
  }
  if (statement.kind === "feed" && weightG !== undefined) return { ...rest, amountG: weightG };
  return set;
}

/** Takes out what the field about to be set makes untrue. */
function makeRoom(fields: Fields, name: string): void {
  for (const pair of LENGTHS) {
    if (pair.some((one) => one === name)) for (const one of pair) delete fields[one];
  }
  if (name === "bait") delete fields.baitNote;
}

/** "About two pounds" amended to three is no longer about. */
const restates = (set: Amendable) => set.weightG !== undefined || set.lengthMm !== undefined;
