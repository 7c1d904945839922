/** One line read in several ways has many of its stretches in common; each is matched once. */
import type { Matcher, Stretch } from "./compromise.ts";

export type Find = Matcher["find"];

/** The same, with what was found before kept for as long as the result is. */
export function remembering(find: Find): Find {
  const found = new Map<string, Stretch[]>();
  return (row) => {
    const key = row.join(" ");
    const before = found.get(key);
    if (before) return before;
    const here = find(row);
    found.set(key, here);
    return here;
  };
}
