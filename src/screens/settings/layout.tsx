import { Choices } from "../../ui/choices.tsx";
import { settingsWords } from "../../words/settings.ts";
import type { App } from "../app.ts";
import { optionsOf } from "./options.ts";

const { layout: words } = settingsWords;

/** For which hand the screens are laid out, and in which colours. */
export function Layout({ app }: { app: App }) {
  const { hand, lights } = app.settings.value;
  return (
    <section class="ticket">
      <h2>{words.title}</h2>
      <Choices
        label={words.hand}
        options={optionsOf(words.hands)}
        value={hand}
        onChange={(value) => app.setSettings({ hand: value })}
      />
      <Choices
        label={words.lights}
        options={optionsOf(words.lightNames)}
        value={lights}
        onChange={(value) => app.setSettings({ lights: value })}
      />
      <p>{words.lightsHint}</p>
    </section>
  );
}
