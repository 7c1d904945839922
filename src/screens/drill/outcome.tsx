import { useState } from "preact/hooks";
import { isSameManner, USUAL_VOICE } from "../../speech/offline/suit.ts";
import { drillWords as words } from "../../words/drill.ts";
import type { Outcome as Found } from "../app/voice.ts";
import type { App } from "../app.ts";

/** What the voice gains by the choice, to be kept or left. */
export function Outcome({ app, outcome }: { app: App; outcome: Found }) {
  const { choice, phrases, right, talk, noise, lines } = outcome;
  const [isKept, setKept] = useState(false);
  const isUsual = isSameManner(choice, USUAL_VOICE) && choice.shift === 0;
  const keep = () => {
    app.setSettings({ voice: isUsual ? undefined : choice });
    setKept(true);
  };
  return (
    <section class="ticket">
      <table class="drill-table">
        <thead>
          <tr>
            <th />
            <th scope="col">{words.before}</th>
            <th scope="col">{words.after}</th>
          </tr>
        </thead>
        <tbody>
          <tr>
            <th scope="row">{words.right}</th>
            <td>{words.of(right.before, phrases)}</td>
            <td>{words.of(right.after, phrases)}</td>
          </tr>
          <tr>
            <th scope="row">{words.talk}</th>
            <td>{words.of(talk.before, talk.of)}</td>
            <td>{words.of(talk.after, talk.of)}</td>
          </tr>
        </tbody>
      </table>
      <p>{words.noise(noise)}</p>
      <p>
        {isUsual
          ? words.noGain
          : words.chosen(words.accents[choice.accent], choice.warp, choice.shift)}
      </p>
      <button type="button" class="button button-main button-wide" disabled={isKept} onClick={keep}>
        {isKept ? words.kept : words.keep}
      </button>
      <details>
        <summary>{words.phrases}</summary>
        <ul class="stack">
          {lines.map(({ phrase, after }) => (
            <li key={phrase}>
              <strong>{phrase}</strong>: {words.heard(after)}
            </li>
          ))}
        </ul>
      </details>
    </section>
  );
}
