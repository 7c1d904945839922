/** What the ears are doing, in words that can be acted on. */
import type { Hearing } from "../app.ts";

export interface EarsWords {
  state: string;
  /** Which ears, and where the sound goes. */
  which?: string;
  /** What the button does. */
  button: string;
  starts: boolean;
}

const STATES: Readonly<Record<Hearing["is"], string>> = {
  off: "Not listening",
  starting: "Opening the microphone",
  listening: "Listening",
  held: "Speaking, then listening",
  waiting: "Waiting to listen again",
  refused: "Not allowed to listen",
  unavailable: "Cannot listen here",
};

const BUTTONS: Partial<Record<Hearing["is"], string>> = {
  off: "Start listening",
  refused: "Try again",
  unavailable: "Try again",
};

export function earsWords({ is, kind, sendsSound }: Hearing): EarsWords {
  const start = BUTTONS[is];
  const which = whichEars(is, kind, sendsSound);
  return {
    state: STATES[is],
    button: start ?? "Stop listening",
    starts: start !== undefined,
    ...(which !== undefined && { which }),
  };
}

function whichEars(is: Hearing["is"], kind: Hearing["kind"], sendsSound: boolean) {
  if (is === "refused" || is === "unavailable") return undefined;
  if (is === "off" && sendsSound) {
    return "The browser turns speech into words and sends the sound to its maker to do so.";
  }
  if (kind === "web")
    return `By the browser${sendsSound ? ", over the network" : ", on the phone"}`;
  if (kind === "offline") return "By the recogniser inside the app; nothing leaves the phone";
  return undefined;
}
