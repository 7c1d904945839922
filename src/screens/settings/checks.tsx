import { settingsWords } from "../../words/settings.ts";

const { checks: words } = settingsWords;

/** The way to try microphone and voice, and what to do about a microphone that is refused. */
export function Checks() {
  return (
    <section class="ticket">
      <h2>{words.title}</h2>
      <p>{words.about}</p>
      <a class="button button-main" href="#guide">
        {words.guide}
      </a>
      <p>{words.refused}</p>
    </section>
  );
}
