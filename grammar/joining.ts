/**
 * What is said of one fish in two breaths is one entry: "perch here, one and a quarter pounds",
 * "it's gone, lost it", "no that's wrong, scratch that".
 */
import { isExcused } from "./leftover.ts";
import type { Piece } from "./match/cover.ts";
import type { Item } from "./match/items.ts";
import type { Statement, StatementOf } from "./statement.ts";

/** Neighbouring pieces that belong together, joined into the first of them. */
export function joinPieces(pieces: readonly Piece[], items: readonly Item[]): Piece[] {
  const joined: Piece[] = [];
  for (const piece of pieces) {
    const before = joined.at(-1);
    const one =
      before && isExcused(items.slice(before.to, piece.from)) ? join(before, piece) : undefined;
    if (before && one) joined[joined.length - 1] = { ...before, to: piece.to, stated: one };
    else joined.push(piece);
  }
  return joined;
}

function join(first: Piece, second: Piece): Piece["stated"] | undefined {
  const [a, ...moreA] = first.stated.statements;
  const [b, ...moreB] = second.stated.statements;
  if (!a || !b || moreA.length > 0 || moreB.length > 0) return undefined;
  const statement = joinStatements(a, b, second);
  if (!statement) return undefined;
  const isWeighed = second.phrase.id === "weight-only";
  const doubts = [
    ...(first.stated.doubts ?? []),
    ...(isWeighed ? [] : (second.stated.doubts ?? [])),
  ];
  return { statements: [statement], doubts };
}

function joinStatements(a: Statement, b: Statement, second: Piece): Statement | undefined {
  if (a.kind === "fish" && b.kind === "fish") return joinFish(a, b, second);
  if (a.kind === "loss" && b.kind === "loss") return joinLoss(a, b, second);
  if (a.kind === "change" && b.kind === "change") return isEmpty(a) ? b : undefined;
  if (a.kind === "conditions" && b.kind === "conditions")
    return a.wind !== undefined && a.wind === b.wind ? { ...a, ...b } : undefined;
  if (a.kind === "withdraw" && b.kind === "withdraw" && b.of === "last") return a;
  return undefined;
}

/** "smaller hook, a size eighteen": the first says that, the second what. */
const isEmpty = (statement: Statement): boolean => Object.keys(statement).length === 1;

/** A weight on its own belongs to the fish named before it; "a fish" to the one named after it. */
function joinFish(
  a: StatementOf<"fish">,
  b: StatementOf<"fish">,
  second: Piece,
): Statement | undefined {
  const isBare = a.weightG === undefined && a.lengthMm === undefined;
  if (isBare && second.phrase.id === "weight-only" && b.species === undefined)
    return { ...a, ...b };
  return isEmpty(a) && b.species !== undefined && b.count === undefined ? b : undefined;
}

/** "lost one" once more in other words; "lost another" is another. */
function joinLoss(
  a: StatementOf<"loss">,
  b: StatementOf<"loss">,
  second: Piece,
): Statement | undefined {
  if (second.stated.isAnother || b.species !== undefined) return undefined;
  return { ...a, cause: a.cause === "off" ? b.cause : a.cause };
}
