import { useState } from "preact/hooks";
import { saveFile } from "../../share/send.ts";
import { DECODER_RATE_HZ } from "../../speech/offline/decoder.ts";
import { fromMuLaw } from "../../speech/offline/mu-law.ts";
import { toWav } from "../../speech/offline/wav.ts";
import { drillWords as words } from "../../words/drill.ts";
import type { Drill } from "../app/voice.ts";

/** A second between two of them, so that ears tell them apart. */
const PAUSE = new Float32Array(DECODER_RATE_HZ);

/** The recordings out of the phone as one file, or gone. */
export function Recordings({ drill }: { drill: Drill }) {
  const [areGone, setGone] = useState(false);
  if (areGone) return <p role="status">{words.forgotten}</p>;
  const save = () => saveFile(oneFile([...drill.recordings.values()]));
  const forget = () => {
    drill.forget();
    setGone(true);
  };
  return (
    <div class="row">
      <button type="button" class="button" onClick={save}>
        {words.save}
      </button>
      <button type="button" class="button button-take-out" onClick={forget}>
        {words.forget}
      </button>
    </div>
  );
}

function oneFile(sounds: readonly Uint8Array[]): File {
  const pieces = sounds.flatMap((sound) => [PAUSE, fromMuLaw(sound)]);
  const whole = new Float32Array(pieces.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const piece of pieces) {
    whole.set(piece, at);
    at += piece.length;
  }
  return new File([toWav(whole, DECODER_RATE_HZ)], words.file, { type: "audio/wav" });
}
