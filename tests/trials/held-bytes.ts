import { setFlagsFromString } from "node:v8";
import { runInNewContext } from "node:vm";

/** Bytes of the heap that something still holds on to, whatever waits to be cleared away. */
export function heldBytes(): number {
  setFlagsFromString("--expose-gc");
  const clear: () => void = runInNewContext("gc");
  clear();
  return process.memoryUsage().heapUsed;
}
