import type { ReadonlySignal } from "@preact/signals";
import type { PastSession } from "../../analysis/seasons/past.ts";

export type { PastSession };

/** What earlier sessions taught; empty until they are read, and while the sample is shown. */
export type Past = ReadonlySignal<readonly PastSession[]>;
