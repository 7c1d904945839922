import { FileCopy } from "./file-copy.ts";

export const makeCopy = (): FileCopy =>
  new FileCopy(new Worker(new URL("./copy-worker.ts", import.meta.url), { type: "module" }));
