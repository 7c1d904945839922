/** One entry of several fish told apart, and two entries told as one. */
import type { StatementOf } from "../../grammar/statement.ts";
import { LENGTHS } from "./amend.ts";
import { fishIn } from "./catch.ts";
import { same } from "./correction.ts";
import type { EntryStatement } from "./event.ts";
import type { Entry } from "./session.ts";

type Fish = StatementOf<"fish">;
type Fields = Record<string, unknown>;

/** The same fish, so many of them. @param count 1 or more */
export function withCount({ count: _count, ...fish }: Fish, count: number): Fish {
  return count === 1 ? fish : { ...fish, count };
}

/** Where one fish stands within an entry of several. */
export interface Position {
  /** How many fish each part has, in the order of their numbers. */
  counts: readonly number[];
  /** Which of the parts is the one fish. */
  index: number;
}

/**
 * The parts an entry falls into when one of its fish is told apart from the others.
 * @param number the fish's number in the session
 * @returns undefined for what is no entry of several fish, or does not have that number
 */
export function apart({ statement, fishNumber }: Entry, number: number): Position | undefined {
  if (statement.kind !== "fish" || fishNumber === undefined) return undefined;
  const count = fishIn(statement);
  const before = number - fishNumber;
  if (count === 1 || before < 0 || before >= count) return undefined;
  const counts = [before, 1, count - before - 1].filter((part) => part > 0);
  return { counts, index: before > 0 ? 1 : 0 };
}

/**
 * Two entries that tell of one and the same thing: what either leaves out stands in the other.
 * @returns undefined where they contradict each other
 */
export function asOne(one: EntryStatement, other: EntryStatement): EntryStatement | undefined {
  const [first, second] = [one as unknown as Fields, other as unknown as Fields];
  const agree = Object.entries(first).every(
    ([name, value]) => name === "unit" || second[name] === undefined || same(value, second[name]),
  );
  if (!agree || isValueAndStep(first, second) || isOtherCount(one, other)) return undefined;
  const unit = { ...(second.unit ?? {}), ...(first.unit ?? {}) };
  const fields = { ...second, ...first, ...(Object.keys(unit).length > 0 && { unit }) };
  return fields as unknown as EntryStatement;
}

/** A length that was set in the one and stepped in the other: one change cannot say both. */
const isValueAndStep = (one: Fields, other: Fields): boolean =>
  LENGTHS.some(([to, by]) => (to in one && by in other) || (by in one && to in other));

/** "Three roach" and "roach" are not the same; "three roach" and "two ounces" may be. */
function isOtherCount(one: EntryStatement, other: EntryStatement): boolean {
  if (one.kind !== "fish" || other.kind !== "fish" || fishIn(one) === fishIn(other)) return false;
  const single = one.count === undefined ? one : other;
  return single.species !== undefined;
}

/**
 * Two entries of fish of one species as one entry of all of them, weighing what both weigh.
 * @returns undefined where one entry cannot say what the two say
 */
export function together(one: EntryStatement, other: EntryStatement): Fish | undefined {
  if (one.kind !== "fish" || other.kind !== "fish") return undefined;
  const { weightG, count: _count, unit, ...rest } = one;
  const { weightG: otherG, count: _other, unit: otherUnit, ...otherRest } = other;
  const isWeightKnownOfOne = (weightG === undefined) !== (otherG === undefined);
  if (!same(rest, otherRest) || isWeightKnownOfOne) return undefined;
  const [some, more] = [fishIn(one), fishIn(other)];
  const count = some + more;
  const units = unit ?? otherUnit;
  const mean =
    weightG === undefined || otherG === undefined
      ? undefined
      : weightG === otherG
        ? weightG
        : (weightG * some + otherG * more) / count;
  return {
    ...rest,
    count,
    ...(mean !== undefined && { weightG: mean }),
    ...(units !== undefined && { unit: units }),
  };
}
