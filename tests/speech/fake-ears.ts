/** Ears that write down all they are told, in order. */

import type { RecogniserEars, Utterance } from "../../src/speech/recogniser.ts";

export class FakeEars implements RecogniserEars {
  readonly told: string[] = [];
  readonly interims: string[] = [];
  readonly utterances: Utterance[] = [];

  onListening = () => void this.told.push("listening");
  onInterim = (text: string) => void this.interims.push(text);
  onUtterance = (utterance: Utterance) => {
    this.utterances.push(utterance);
    this.told.push(`said: ${utterance.alternatives[0]?.text}`);
  };
  onTrouble = ({ reason }: { reason: string }) => void this.told.push(`trouble: ${reason}`);
  onEnd = () => void this.told.push("end");

  get said(): Array<string | undefined> {
    return this.utterances.map(({ alternatives }) => alternatives[0]?.text);
  }
}
