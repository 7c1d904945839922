/**
 * What is said of one thing in two breaths is one statement: "perch here, one and a quarter pounds",
 * "it's gone, lost it", "rig two at three foot deep", "no that's wrong, scratch that".
 */
import type { Piece } from "./match/cover.ts";
import type { Item } from "./match/items.ts";
import type { Statement, StatementOf } from "./statement.ts";

/**
 * Neighbouring pieces that belong together, joined into the first of them.
 * @param isEnd whether a sentence ends after this item
 * @param mayJoin whether the words between two pieces may be passed over
 */
export function joinPieces(
  pieces: readonly Piece[],
  items: readonly Item[],
  isEnd: (item: Item) => boolean,
  mayJoin: (gap: readonly Item[]) => boolean,
): Piece[] {
  const joined: Piece[] = [];
  for (const piece of pieces) {
    const before = joined.at(-1);
    const gap = before ? items.slice(before.to, piece.from) : [];
    const isApart = before && (isEnd(items[before.to - 1] as Item) || gap.some(isEnd));
    const one = before && !isApart && mayJoin(gap) ? join(before, piece) : undefined;
    if (before && one) joined[joined.length - 1] = { ...before, to: piece.to, stated: one };
    else joined.push(piece);
  }
  return joined;
}

/** Phrases whose doubt is gone once they belong to something, but for what a bare number means. */
const ABSORBED = new Set(["weight-only", "corrected-size", "bare-bait"]);

function join(first: Piece, second: Piece): Piece["stated"] | undefined {
  const [a, ...moreA] = first.stated.statements;
  const [b, ...moreB] = second.stated.statements;
  if (!a || !b || moreA.length > 0 || moreB.length > 0) return undefined;
  if (first.stated.onlyCorrects && second.stated.onlyCorrects) return undefined;
  const statement = joinStatements(a, b, first, second);
  if (!statement) return undefined;
  const doubts = [first, second].flatMap(({ phrase, stated }) =>
    (stated.doubts ?? []).filter((doubt) => !ABSORBED.has(phrase.id) || doubt === "a bare number"),
  );
  return { statements: [statement], doubts };
}

function joinStatements(
  a: Statement,
  b: Statement,
  first: Piece,
  second: Piece,
): Statement | undefined {
  switch (a.kind) {
    case "fish":
      return b.kind === "fish" ? joinFish(a, b, first, second) : undefined;
    case "loss":
      if (b.kind === "fish") return joinLostFish(a, b, second);
      return b.kind === "loss" ? joinLoss(a, b, second) : undefined;
    case "change":
      return b.kind === "change" ? joinFields(a, b) : undefined;
    case "conditions":
      return b.kind === "conditions" ? joinConditions(a, b) : undefined;
    case "feed":
      return b.kind === "feed" || second.phrase.id === "bare-bait" ? joinFeed(a, b) : undefined;
    case "drop":
      return b.kind === "drop" ? a : undefined;
    case "ask":
      return b.kind === "ask" && a.what === b.what ? a : undefined;
    case "net":
      return b.kind === "net" ? joinFields(a, b) : undefined;
    case "session":
      return b.kind === "session" && a.act === b.act ? a : undefined;
    case "sign":
      return b.kind === "sign" && a.sort === b.sort ? a : undefined;
    case "withdraw":
      return b.kind === "withdraw" && b.of === "last" ? a : undefined;
    default:
      return undefined;
  }
}

/** "potted some in, fifty grams"; a bait named right after feeding is what was fed. */
function joinFeed(a: StatementOf<"feed">, b: Statement): Statement | undefined {
  if (b.kind === "feed") return joinFields(a, b);
  if (b.kind !== "change" || b.bait === undefined || a.bait !== undefined) return undefined;
  return { ...a, bait: b.bait, ...(b.baitNote !== undefined && { baitNote: b.baitNote }) };
}

/**
 * "rig two at three foot deep" is one change. Two values for one field stay two statements, and so
 * do lengths in two units, since a statement keeps one.
 */
function joinFields<T extends Statement>(a: T, b: T): T | undefined {
  const clashes = Object.entries(b).some(([field, value]) => {
    const known = (a as Record<string, unknown>)[field];
    return known !== undefined && JSON.stringify(known) !== JSON.stringify(value);
  });
  return clashes ? undefined : { ...a, ...b };
}

/** "smaller hook, a size eighteen": the first says that, the second what. */
const isEmpty = (statement: Statement): boolean => Object.keys(statement).length === 1;

/** "water nine degrees, air twelve" is one reading; wind and sky are noticed on their own. */
function joinConditions(a: StatementOf<"conditions">, b: StatementOf<"conditions">) {
  const isOfTemperature = [a, b].every(({ wind, sky }) => wind === undefined && sky === undefined);
  const isSameWind = a.wind !== undefined && a.wind === b.wind;
  return isOfTemperature || isSameWind ? joinFields(a, b) : undefined;
}

/** Phrases that say a size and no fish. */
const SIZES = new Set(["weight-only", "corrected-size"]);

/** "came off at the net, F1": a name alone after a loss is what was lost. */
function joinLostFish(
  loss: StatementOf<"loss">,
  { species, ...rest }: StatementOf<"fish">,
  second: Piece,
): Statement | undefined {
  const isName = second.to - second.from === 1 && Object.keys(rest).length === 1;
  return isName && species !== undefined && loss.species === undefined
    ? { ...loss, species }
    : undefined;
}

/** A weight on its own belongs to the fish named before it; "a fish" to the one named after it. */
function joinFish(
  a: StatementOf<"fish">,
  b: StatementOf<"fish">,
  first: Piece,
  second: Piece,
): Statement | undefined {
  const isBare = a.weightG === undefined && a.lengthMm === undefined;
  if (isBare && SIZES.has(second.phrase.id) && b.species === undefined) return { ...a, ...b };
  const isUnsized = b.weightG === undefined && b.lengthMm === undefined;
  const isSize = SIZES.has(first.phrase.id) && a.species === undefined;
  if (isSize && isUnsized && b.species !== undefined) return { ...b, ...a };
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
