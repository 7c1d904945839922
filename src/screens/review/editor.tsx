import { useState } from "preact/hooks";
import type { EntryStatement } from "../../log/event.ts";
import type { Entry } from "../../log/session.ts";
import type { Note } from "../../scribe/notebook.ts";
import { Choices } from "../../ui/choices.tsx";
import { reviewWords } from "../../words/review.ts";
import type { App } from "../app.ts";
import { Alters } from "./alters.tsx";
import { asKind, sound, withField } from "./correct.ts";
import { FieldControl } from "./field-control.tsx";
import { FIELDS, NEW_ENTRIES, usualFields } from "./fields.ts";
import { TimeControl } from "./time-control.tsx";

const { editor: words } = reviewWords;

interface EditorProps {
  app: App;
  /** The entry that is put right; undefined for one never said. */
  entry?: Entry;
  statement: EntryStatement;
  /** Milliseconds since the epoch. */
  at: number;
  /** What the button that finishes says. */
  save: string;
  /** What saving would write, to be told of before. */
  notes: (statement: EntryStatement, at: number) => Note[];
  onSave: (statement: EntryStatement, at: number) => void;
}

/** All fields of one entry. Nothing is written until it is saved. */
export function Editor({ app, entry, statement, at, save, notes, onSave }: EditorProps) {
  const [draft, setDraft] = useState(statement);
  const [when, setWhen] = useState(at);
  const [isWhole, setWhole] = useState(false);
  const finished = sound(draft);
  const usual = usualFields(draft);
  const all = FIELDS[draft.kind];
  return (
    <div class="editor stack">
      {(isWhole ? all : usual).map((field) => (
        <FieldControl
          key={field.name}
          app={app}
          field={field}
          statement={draft}
          onChange={(value, name = field.name) => setDraft((now) => withField(now, name, value))}
        />
      ))}
      <TimeControl app={app} entry={entry} at={at} when={when} onChange={setWhen} />
      {isWhole && entry && <KindControl draft={draft} onChange={setDraft} />}
      {!isWhole && (entry || usual.length < all.length) && (
        <button type="button" class="button" onClick={() => setWhole(true)}>
          {words.more}
        </button>
      )}
      {finished && <Alters app={app} notes={notes(finished, when)} about={draft.kind} />}
      <button
        type="button"
        class="button button-main"
        disabled={!finished}
        onClick={() => finished && onSave(finished, when)}
      >
        {save}
      </button>
    </div>
  );
}

interface KindControlProps {
  draft: EntryStatement;
  onChange: (statement: EntryStatement) => void;
}

/** Makes another kind of entry of it, with what both kinds can say. */
function KindControl({ draft, onChange }: KindControlProps) {
  return (
    <Choices<string>
      label={words.kind}
      options={NEW_ENTRIES.map(({ name, statement }) => ({ value: statement.kind, name }))}
      value={draft.kind}
      onChange={(kind) => {
        const start = NEW_ENTRIES.find(({ statement }) => statement.kind === kind);
        if (start) onChange(asKind(draft, start.statement));
      }}
    />
  );
}
