/** One row a fish, as the session stands after every correction, for sums of one's own. */
import type { Session } from "../../log/session.ts";
import { type Cell, toCsv, utcText } from "./cells.ts";

export const FISH_MARK = "pegscribe_fish";
const FISH_VERSION = 1;

const HEADERS = [
  FISH_MARK,
  ...["session_id", "event_id", "fish_number", "count", "time_utc", "minutes_since_start"],
  ...["water", "peg", "method"],
  ...["species", "weight_g", "length_mm", "approximate", "foul_hooked", "still_to_check", "net"],
  ...["rig", "depth_mm", "distance_mm", "hook_size", "bait", "bait_note", "above_float_mm"],
];

const MS_PER_MINUTE = 60_000;

export const fishCsv = (sessions: Iterable<Session>): string =>
  toCsv(HEADERS, [...sessions].flatMap(rowsOf));

/** More than anyone nets at once: an entry of as many stands in one row, with its count. */
const MOST_ROWS = 100;

/** An entry of three fish makes three rows, numbered on. */
function rowsOf({ id, plan, startedAt, entries }: Session): Cell[][] {
  return entries.flatMap((entry) => {
    const { statement, at, setUp, net, verdict, fishNumber = 0 } = entry;
    if (statement.kind !== "fish") return [];
    const { species, weightG, lengthMm, approx, foul, count = 1 } = statement;
    const minutes = startedAt === undefined ? undefined : (at - startedAt) / MS_PER_MINUTE;
    const [rows, each] = count <= MOST_ROWS ? [count, 1] : [1, count];
    return Array.from({ length: rows }, (_, place): Cell[] => [
      ...[FISH_VERSION, id, entry.id, fishNumber + place, each],
      ...[utcText(at), minutes?.toFixed(2)],
      ...[plan.water ?? undefined, plan.peg ?? undefined, plan.method ?? undefined],
      ...[species, weightG, lengthMm, yes(approx), yes(foul), yes(verdict === "check"), net],
      ...[setUp.rig, setUp.depthMm, setUp.distanceMm, setUp.hook, setUp.bait, setUp.baitNote],
      setUp.lashMm,
    ]);
  });
}

const yes = (is: boolean | undefined): Cell => (is ? "yes" : undefined);
