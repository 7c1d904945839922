import type { ComponentChildren } from "preact";
import { useId, useState } from "preact/hooks";

interface TextFieldProps {
  label: string;
  value: string;
  /** Called with the trimmed text once it is finished and differs. */
  onSave: (text: string) => void;
  hint?: string;
  /** What is typed: words, a number, or a time of day. */
  of?: "text" | "decimal" | "time";
  /** Stands behind the field, such as a unit. */
  after?: ComponentChildren;
}

/** A line of text that is saved when it is left. What is being typed survives a redrawing. */
export function TextField(props: TextFieldProps) {
  const { label, value, onSave, hint, of = "text", after } = props;
  const id = useId();
  const [draft, setDraft] = useState<string>();
  const finish = (text: string) => {
    setDraft(undefined);
    if (text.trim() !== value) onSave(text.trim());
  };
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <div class={after === undefined ? "" : "with-unit"}>
        <input
          id={id}
          class="input"
          {...(of === "time" ? { type: of } : { inputMode: of })}
          value={draft ?? value}
          maxLength={200}
          autocomplete="off"
          aria-describedby={hint === undefined ? undefined : `${id}-hint`}
          onInput={(event) => setDraft(event.currentTarget.value)}
          onChange={(event) => finish(event.currentTarget.value)}
        />
        {after}
      </div>
      {hint !== undefined && <p id={`${id}-hint`}>{hint}</p>}
    </div>
  );
}

interface NumberFieldProps {
  label: string;
  /** In `unit`; undefined where nothing is set. */
  value: number | undefined;
  unit: string;
  /** Called with undefined where the field was emptied. */
  onSave: (value: number | undefined) => void;
  hint?: string;
}

/** A number above 0 in a unit. Anything else is not saved, and the field shows what still stands. */
export function NumberField({ label, value, unit, onSave, hint }: NumberFieldProps) {
  const save = (text: string) => {
    const number = Number(text.replace(",", "."));
    if (text === "") onSave(undefined);
    else if (Number.isFinite(number) && number > 0) onSave(number);
  };
  return (
    <TextField
      label={`${label} (${unit})`}
      value={value === undefined ? "" : String(Number(value.toFixed(2)))}
      of="decimal"
      onSave={save}
      after={<span aria-hidden="true">{unit}</span>}
      {...(hint !== undefined && { hint })}
    />
  );
}
