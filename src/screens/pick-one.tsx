import { useId } from "preact/hooks";
import type { Option } from "../ui/choices.tsx";
import { controlWords } from "../words/controls.ts";

interface PickOneProps {
  label: string;
  options: readonly Option<string>[];
  onPick: (value: string) => void;
}

/** A list to take one thing from; it goes back to its label afterwards. */
export function PickOne({ label, options, onPick }: PickOneProps) {
  const id = useId();
  const pick = (select: HTMLSelectElement) => {
    const { value } = select;
    select.value = "";
    if (value) onPick(value);
  };
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <select id={id} class="input" onChange={(event) => pick(event.currentTarget)}>
        <option value="">{controlWords.choose}</option>
        {options.map((option) => (
          <option key={option.value} value={option.value}>
            {option.name}
          </option>
        ))}
      </select>
    </div>
  );
}
