import { useEffect, useState } from "preact/hooks";

/** More than a screen holds. */
const AT_ONCE = 60;
/** So many rows are made in a few milliseconds, on a phone in a few tens. */
const MORE = 120;

/** How many rows of a long list to show by now: the first at once, the rest bit by bit after them. */
export function useGrowing(length: number): number {
  const [shown, setShown] = useState(AT_ONCE);
  useEffect(() => {
    if (shown >= length) return;
    const timer = setTimeout(() => setShown(shown + MORE));
    return () => clearTimeout(timer);
  }, [shown, length]);
  return Math.min(shown, length);
}
