import { Choices } from "../../ui/choices.tsx";
import { TextField } from "../../ui/text-field.tsx";
import { settingsWords } from "../../words/settings.ts";
import type { App } from "../app.ts";
import { optionsOf } from "./options.ts";

const { talking: words } = settingsWords;

/** Units, and how the phone talks and when it counts what it hears. */
export function Talking({ app }: { app: App }) {
  const { weight, length, talkback, callWord } = app.settings.value;
  return (
    <section class="ticket">
      <h2>{words.title}</h2>
      <Choices
        label={words.weights}
        options={optionsOf(words.weightStyles)}
        value={weight}
        onChange={(value) => app.setSettings({ weight: value })}
      />
      <Choices
        label={words.lengths}
        options={optionsOf(words.lengthStyles)}
        value={length}
        onChange={(value) => app.setSettings({ length: value })}
      />
      <Choices
        label={words.talkback}
        options={optionsOf(words.levels)}
        value={talkback}
        onChange={(value) => app.setSettings({ talkback: value })}
      />
      <TextField
        label={words.callWord}
        value={callWord ?? ""}
        onSave={(word) => app.setSettings({ callWord: word || undefined })}
        hint={words.callWordHint}
      />
    </section>
  );
}
