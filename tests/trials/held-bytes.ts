import { setFlagsFromString } from "node:v8";
import { runInNewContext } from "node:vm";

/** Clears away all that nothing holds on to any more. */
function clearAway(): void {
  setFlagsFromString("--expose-gc");
  const clear: () => void = runInNewContext("gc");
  clear();
}

/** Bytes of the heap that something still holds on to. */
export function heldBytes(): number {
  clearAway();
  return process.memoryUsage().heapUsed;
}

/** Bytes of memory of the whole process, modules' memories and all, with nothing left to clear away. */
export function residentBytes(): number {
  clearAway();
  return process.memoryUsage.rss();
}
