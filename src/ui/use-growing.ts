import { useEffect, useState } from "preact/hooks";

export interface Growth {
  first: number;
  /** How many come with each step after that. */
  more: number;
}

/** More rows than a screen holds, then so many as are made in a few milliseconds, on a phone in a few tens. */
export const ROWS: Growth = { first: 60, more: 120 };

/** Parts of a page each of which is work enough for itself. */
export const PARTS: Growth = { first: 1, more: 1 };

/**
 * How many of a long row of things to show by now: the first at once, the others once those are
 * painted, step by step, each step a task of its own so that a touch can come in between.
 */
export function useGrowing(length: number, { first, more }: Growth): number {
  const [shown, setShown] = useState(first);
  const isAll = shown >= length;
  useEffect(() => {
    if (isAll) return;
    const grow = () => setShown((now) => (now < length ? now + more : now));
    const timer = setInterval(grow);
    return () => clearInterval(timer);
  }, [isAll, length, more]);
  return Math.min(shown, length);
}
