/** What this browser offers to the ears inside the app. */
import { EarsFiles } from "../speech/offline/ears-files.ts";
import { EarsCare } from "./ears-care.ts";

/** Long enough for a first visit to put the app's own files by. */
const APP_KEPT_LIMIT_MS = 20_000;

/** Whether they can run at all: a page that came unencrypted has neither microphone nor storage. */
export const canHearInside = (scope: Partial<typeof globalThis> = globalThis): boolean =>
  scope.caches !== undefined &&
  scope.AudioWorkletNode !== undefined &&
  scope.WebAssembly !== undefined &&
  scope.Worker !== undefined &&
  scope.navigator?.mediaDevices?.getUserMedia !== undefined;

/** Whether a service worker stands in for the server; on a first visit it takes a while. */
export async function isAppKept(): Promise<boolean> {
  const { serviceWorker } = navigator as Partial<Navigator>;
  if (!serviceWorker) return false;
  if (serviceWorker.controller) return true;
  return new Promise((resolve) => {
    serviceWorker.addEventListener("controllerchange", () => resolve(true), { once: true });
    setTimeout(() => resolve(serviceWorker.controller !== null), APP_KEPT_LIMIT_MS);
  });
}

/** Where the app came from, with a slash at the end. */
export const appFolder = (): string => new URL(".", document.baseURI).href;

/** @param askToKeep asks the browser not to clear away what is kept */
export const makeEarsCare = (askToKeep: () => Promise<unknown>): EarsCare =>
  new EarsCare({
    files: new EarsFiles(appFolder()),
    isPossible: canHearInside(),
    askToKeep,
    isAppKept,
  });
