/** Whether the browser can recognise speech on the device, and having it fetch what that takes. */

import { type Clock, systemClock, withinLimit } from "./clock.ts";
import type { Availability, WebRecognitionConstructor } from "./web-speech-types.ts";

export const AVAILABLE_LIMIT_MS = 5_000;
export const INSTALL_LIMIT_MS = 180_000;

/** Most fitting first; some versions of Chrome know English on the device as en-US only. */
const ENGLISH = ["en-GB", "en-US"] as const;

export interface LocalLanguage {
  lang: string;
  status: Exclude<Availability, "unavailable">;
}

/** The English that is ready on the device, else one that could be, else undefined. */
export async function findLocalLanguage(
  Recognition: WebRecognitionConstructor,
  clock: Clock = systemClock,
): Promise<LocalLanguage | undefined> {
  const found: LocalLanguage[] = [];
  for (const lang of ENGLISH) {
    const status = await availability(Recognition, lang, clock);
    if (status !== "unavailable") found.push({ lang, status });
  }
  return found.find(({ status }) => status === "available") ?? found[0];
}

/**
 * Has the browser fetch a language for the device. To be called within a gesture only. True when
 * it is there afterwards; false when refused, impossible or not done in `INSTALL_LIMIT_MS`.
 */
export function installLocally(
  Recognition: WebRecognitionConstructor,
  lang: string,
  clock: Clock = systemClock,
): Promise<boolean> {
  const { install } = Recognition;
  if (!install) return Promise.resolve(false);
  const asked = settled(() => install.call(Recognition, { langs: [lang], processLocally: true }));
  return withinLimit(asked, INSTALL_LIMIT_MS, false, clock);
}

function availability(
  Recognition: WebRecognitionConstructor,
  lang: string,
  clock: Clock,
): Promise<Availability> {
  const { available } = Recognition;
  if (!available) return Promise.resolve("unavailable");
  const asked = settled(() => available.call(Recognition, { langs: [lang], processLocally: true }));
  return withinLimit(asked, AVAILABLE_LIMIT_MS, "unavailable", clock);
}

/** A call made at once, within the gesture, whose exception becomes a rejection. */
function settled<T>(call: () => Promise<T>): Promise<T> {
  return new Promise((resolve) => resolve(call()));
}
