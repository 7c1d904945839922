import { useState } from "preact/hooks";
import type { OwnWord } from "../../log/event.ts";
import { TextField } from "../../ui/text-field.tsx";
import { ownWordsWords as words } from "../../words/own-words.ts";
import type { App } from "../app.ts";

/** Names of the angler's own, with the way they are spoken. */
export function OwnWords({ app }: { app: App }) {
  const { ownSpecies = [], ownBaits = [], ownRigs = [] } = app.session.value.plan;
  return (
    <section class="ticket">
      <h2>{words.title}</h2>
      <p>{words.what}</p>
      <WordList
        title={words.species}
        own={ownSpecies}
        onSave={(own) => app.setPlan({ ownSpecies: own })}
      />
      <WordList
        title={words.baits}
        own={ownBaits}
        onSave={(own) => app.setPlan({ ownBaits: own })}
      />
      <WordList title={words.rigs} own={ownRigs} onSave={(own) => app.setPlan({ ownRigs: own })} />
    </section>
  );
}

interface WordListProps {
  title: string;
  own: readonly OwnWord[];
  onSave: (own: OwnWord[]) => void;
}

function WordList({ title, own, onSave }: WordListProps) {
  const without = (name: string) => own.filter((word) => word.name !== name);
  return (
    <section class="stack own-words">
      <h3>{title}</h3>
      {own.length > 0 && (
        <ul class="stack">
          {own.map(({ name, spoken, soundsLike }) => (
            <li class="row row-apart" key={name}>
              <span>
                <strong>{name}</strong>
                {spoken.length > 0 && words.said(spoken)}
                {soundsLike !== undefined && words.like(soundsLike)}
              </span>
              <button
                type="button"
                class="button button-take-out"
                onClick={() => onSave(without(name))}
                aria-label={words.takeOutNamed(name)}
              >
                {words.takeOut}
              </button>
            </li>
          ))}
        </ul>
      )}
      <NewWord title={title} onAdd={(word) => onSave([...without(word.name), word])} />
    </section>
  );
}

function NewWord({ title, onAdd }: { title: string; onAdd: (word: OwnWord) => void }) {
  const [name, setName] = useState("");
  const [spoken, setSpoken] = useState("");
  const [sounds, setSounds] = useState("");
  const add = () => {
    onAdd({
      name,
      spoken: spoken
        .split(",")
        .map((way) => way.trim())
        .filter(Boolean),
      ...(sounds && { soundsLike: sounds }),
    });
    setName("");
    setSpoken("");
    setSounds("");
  };
  return (
    <details>
      <summary>{words.addTo(title)}</summary>
      <div class="stack">
        <TextField label={words.name} value={name} onSave={setName} />
        <TextField label={words.also} value={spoken} onSave={setSpoken} hint={words.alsoHint} />
        <TextField label={words.sounds} value={sounds} onSave={setSounds} hint={words.soundsHint} />
        <button type="button" class="button button-main" disabled={!name} onClick={add}>
          {words.add}
        </button>
      </div>
    </details>
  );
}
