/** From a spoken "last one" or "fish seven" to the events it means, at the moment it is said. */
import type { Amendable, Target } from "../../grammar/statement.ts";
import { canTake } from "./amend.ts";
import { fishIn } from "./catch.ts";
import type { Entry, Session } from "./session.ts";

/**
 * The ids to withdraw or, given `set`, the one id to amend.
 *
 * A number means the fish that has it. "Last" means, to withdraw, the latest entry with all that
 * was said in the same breath; to amend, the latest entry that the fields fit: a fish for what only
 * a fish has, a change for set-up, and for a bare length or weight whichever of these came last.
 * @returns undefined if there is none, or none that the fields fit
 */
export function resolveTarget(
  session: Session,
  of: Target,
  set?: Amendable,
): readonly string[] | undefined {
  const entry = of === "last" ? lastFor(session.entries, set) : numbered(session.entries, of);
  if (!entry || (set && !canTake(entry.statement, set))) return undefined;
  if (of !== "last" || set !== undefined || entry.group === undefined) return [entry.id];
  return session.entries.filter((one) => one.group === entry.group).map((one) => one.id);
}

/** The entry of a fish by its number in the session, which several may share. */
function numbered(entries: readonly Entry[], number: number): Entry | undefined {
  return entries.findLast(
    ({ statement, fishNumber }) =>
      statement.kind === "fish" &&
      fishNumber !== undefined &&
      fishNumber <= number &&
      number < fishNumber + fishIn(statement),
  );
}

function lastFor(entries: readonly Entry[], set: Amendable | undefined): Entry | undefined {
  if (set === undefined) return entries.at(-1);
  // A lost fish has a species too, but "the last one was a tench" is said of one that was landed.
  const isOpenTo = (kind: string) => set.species === undefined || kind === "fish";
  return entries.findLast(({ statement }) => isOpenTo(statement.kind) && canTake(statement, set));
}
