import { useState } from "preact/hooks";
import type { EntryStatement } from "../../log/event.ts";
import { formatClock } from "../../ui/format.ts";
import { Stepper } from "../../ui/stepper.tsx";
import type { App } from "../app.ts";
import { sound, withField } from "./correct.ts";
import { FieldControl } from "./field-control.tsx";
import { fieldsOf } from "./fields.ts";

const TIME_STEPS = [
  { by: 600_000, name: "10 min" },
  { by: 60_000, name: "1 min" },
];

interface EditorProps {
  app: App;
  statement: EntryStatement;
  /** Milliseconds since the epoch. */
  at: number;
  /** What the button that finishes says. */
  save: string;
  onSave: (statement: EntryStatement, at: number) => void;
}

/** All fields of one entry. Nothing is written until it is saved. */
export function Editor({ app, statement, at, save, onSave }: EditorProps) {
  const [draft, setDraft] = useState(statement);
  const [when, setWhen] = useState(at);
  const finished = sound(draft);
  return (
    <div class="editor stack">
      {fieldsOf(draft).map((field) => (
        <FieldControl
          key={field.name}
          app={app}
          field={field}
          statement={draft}
          onChange={(value) => setDraft((now) => withField(now, field.name, value))}
        />
      ))}
      <Stepper
        label="Time"
        value={when}
        format={formatClock}
        steps={TIME_STEPS}
        from={at}
        least={0}
        onChange={setWhen}
      />
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
