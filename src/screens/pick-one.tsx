import { useId } from "preact/hooks";

interface PickOneProps {
  label: string;
  names: readonly string[];
  onPick: (name: string) => void;
}

/** A list to take one thing from; it goes back to its label afterwards. */
export function PickOne({ label, names, onPick }: PickOneProps) {
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
        <option value="">Choose</option>
        {names.map((name) => (
          <option key={name}>{name}</option>
        ))}
      </select>
    </div>
  );
}
