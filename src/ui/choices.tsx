import { useId } from "preact/hooks";

export interface Option<T> {
  value: T;
  name: string;
}

interface ChoicesProps<T> {
  label: string;
  options: readonly Option<T>[];
  value: T;
  onChange: (value: T) => void;
}

/** One of a few, all in sight. */
export function Choices<T extends string | undefined>(props: ChoicesProps<T>) {
  const { label, options, value, onChange } = props;
  const group = useId();
  return (
    <fieldset class="field">
      <legend>{label}</legend>
      <div class="choices">
        {options.map((option) => (
          <label class="choice" key={option.name}>
            <input
              type="radio"
              name={group}
              checked={option.value === value}
              onChange={() => onChange(option.value)}
            />
            {option.name}
          </label>
        ))}
      </div>
    </fieldset>
  );
}

/** Something that is so or not. */
export function Tick(props: { label: string; value: boolean; onChange: (value: boolean) => void }) {
  const { label, value, onChange } = props;
  return (
    <label class="choice tick">
      <input
        type="checkbox"
        checked={value}
        onChange={(event) => onChange(event.currentTarget.checked)}
      />
      {label}
    </label>
  );
}
