/** What the ears are doing, in words that can be acted on. */
import { listeningWords } from "../../words/listening.ts";
import type { Hearing } from "../app.ts";

export interface EarsWords {
  state: string;
  /** Which ears, and where the sound goes. */
  which?: string;
  /** What the button does. */
  button: string;
  starts: boolean;
}

const { live } = listeningWords;

export function earsWords({ is, kind, sendsSound }: Hearing): EarsWords {
  const start = live.starts[is];
  const which = whichEars(is, kind, sendsSound);
  return {
    state: live.states[is],
    button: start ?? live.stop,
    starts: start !== undefined,
    ...(which !== undefined && { which }),
  };
}

function whichEars(is: Hearing["is"], kind: Hearing["kind"], sendsSound: boolean) {
  if (is === "refused" || is === "unavailable") return undefined;
  if (is === "off" && sendsSound) return live.sends;
  if (kind === "web") return live.byWeb(sendsSound);
  if (kind === "offline") return live.byOffline;
  return undefined;
}
