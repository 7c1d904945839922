/** Turns "make that" and the statement after it into one amendment. */
import type { Piece } from "./match/cover.ts";
import type { Amendable, Statement, Target } from "./statement.ts";

export interface Resolved {
  statements: Statement[];
  doubts: string[];
  /** Pieces that stand alone though they may not: their words are left over. */
  loose: Piece[];
}

/** What a correction makes moot: it is a weight or size because it corrects one. */
const MOOT_DOUBTS = new Set(["a weight without a fish", "hook bait or feed was not said"]);

export function resolveCorrections(pieces: readonly Piece[]): Resolved {
  const resolved: Resolved = { statements: [], doubts: [], loose: [] };
  /** In "fish four, make that …" the first announcement names the fish. */
  let carried: Target | undefined;
  for (let i = 0; i < pieces.length; i += 1) {
    const piece = pieces[i] as Piece;
    const next = pieces[i + 1];
    if (next && isRepeated(piece, next)) {
      carried = piece.stated.corrects === "last" ? carried : piece.stated.corrects;
      continue;
    }
    const set = next && announces(piece, next) && newValues(next);
    if (set && piece.stated.corrects !== undefined) {
      resolved.statements.push({ kind: "amend", of: carried ?? piece.stated.corrects, set });
      carried = undefined;
      resolved.doubts.push(...doubtsOf(next).filter((doubt) => !MOOT_DOUBTS.has(doubt)));
      i += isTail(pieces[i + 2]) ? 2 : 1;
    } else if (piece.stated.corrects !== undefined || piece.stated.onlyCorrects) {
      resolved.loose.push(piece);
    } else {
      resolved.statements.push(...piece.stated.statements);
      resolved.doubts.push(...doubtsOf(piece));
    }
  }
  return resolved;
}

/** "sorry, I meant": two announcements are one. */
const isRepeated = (piece: Piece, next: Piece): boolean =>
  piece.stated.corrects !== undefined &&
  next.stated.corrects !== undefined &&
  next.from === piece.to;

const announces = ({ stated, to }: Piece, next: Piece): boolean =>
  stated.corrects !== undefined &&
  next.from === to &&
  !(stated.mildly && next.stated.statements[0]?.kind === "loss");

const doubtsOf = (piece: Piece): string[] => piece.stated.doubts ?? [];

/** "…, not a bream". */
const isTail = (piece: Piece | undefined): boolean => piece?.stated.negates === true;

/** The fields of the one statement that follows, where its kind can be amended at all. */
function newValues(piece: Piece): Amendable | undefined {
  const [statement, second] = piece.stated.statements;
  if (!statement || second) return undefined;
  switch (statement.kind) {
    case "fish":
    case "change":
    case "net":
    case "loss": {
      const { kind: _kind, ...fields } = statement;
      return Object.keys(fields).length > 0 ? fields : undefined;
    }
    default:
      return undefined;
  }
}
