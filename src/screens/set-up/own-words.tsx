import { useState } from "preact/hooks";
import type { OwnWord } from "../../log/event.ts";
import { TextField } from "../../ui/text-field.tsx";
import type { App } from "../app.ts";

/** Names of the angler's own, with the way they are spoken. */
export function OwnWords({ app }: { app: App }) {
  const { ownSpecies = [], ownBaits = [], ownRigs = [] } = app.session.value.plan;
  return (
    <section class="ticket">
      <h2>Words of your own</h2>
      <p>What you name here is understood when it is said, and offered where there is a choice.</p>
      <WordList
        title="Species"
        words={ownSpecies}
        onSave={(words) => app.setPlan({ ownSpecies: words })}
      />
      <WordList
        title="Baits"
        words={ownBaits}
        onSave={(words) => app.setPlan({ ownBaits: words })}
      />
      <WordList title="Rigs" words={ownRigs} onSave={(words) => app.setPlan({ ownRigs: words })} />
    </section>
  );
}

interface WordListProps {
  title: string;
  words: readonly OwnWord[];
  onSave: (words: OwnWord[]) => void;
}

function WordList({ title, words, onSave }: WordListProps) {
  const without = (name: string) => words.filter((word) => word.name !== name);
  return (
    <section class="stack own-words">
      <h3>{title}</h3>
      {words.length > 0 && (
        <ul class="stack">
          {words.map(({ name, spoken }) => (
            <li class="row row-apart" key={name}>
              <span>
                <strong>{name}</strong>
                {spoken.length > 0 && `, said “${spoken.join("”, “")}”`}
              </span>
              <button
                type="button"
                class="button button-take-out"
                onClick={() => onSave(without(name))}
                aria-label={`Take out ${name}`}
              >
                Take out
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
  const add = () => {
    onAdd({
      name,
      spoken: spoken
        .split(",")
        .map((way) => way.trim())
        .filter(Boolean),
    });
    setName("");
    setSpoken("");
  };
  return (
    <details>
      <summary>Add to {title.toLowerCase()}</summary>
      <div class="stack">
        <TextField label="Name" value={name} onSave={setName} />
        <TextField
          label="Also said"
          value={spoken}
          onSave={setSpoken}
          hint="Other ways it is spoken, with commas between them."
        />
        <button type="button" class="button button-main" disabled={!name} onClick={add}>
          Add
        </button>
      </div>
    </details>
  );
}
