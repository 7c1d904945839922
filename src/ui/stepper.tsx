import { useId } from "preact/hooks";

/** One press: how far it goes, and what it is called, such as 10 and "1 cm". */
export interface Step {
  by: number;
  name: string;
}

interface StepperProps {
  label: string;
  /** Undefined where nothing was said. */
  value: number | undefined;
  format: (value: number) => string;
  /** The coarse step first. */
  steps: readonly Step[];
  /** Where the first press starts from, when nothing was said. */
  from: number;
  /** The least value, which no press goes below. */
  least: number;
  onChange: (value: number) => void;
  /** Present where the value may be taken away again. */
  onClear?: () => void;
}

/** A quantity set by pressing, for cold fingers: coarse steps outside, fine ones beside the value. */
export function Stepper(props: StepperProps) {
  const { label, value, format, steps, from, least, onChange, onClear } = props;
  const id = useId();
  const press = (by: number) => onChange(Math.max(least, (value ?? from) + by));
  const button = (by: number, name: string) => (
    <button
      key={by}
      type="button"
      class="button"
      onClick={() => press(by)}
      aria-label={`${label} ${by < 0 ? "down" : "up"} ${name}`}
    >
      {`${by < 0 ? "−" : "+"}${name}`.split(" ").map((part) => (
        <span key={part}>{part} </span>
      ))}
    </button>
  );
  return (
    <fieldset class="field">
      <legend id={id}>{label}</legend>
      <div class="stepper">
        {steps.map(({ by, name }) => button(-by, name))}
        <output aria-labelledby={id}>{value === undefined ? "not said" : format(value)}</output>
        {[...steps].reverse().map(({ by, name }) => button(by, name))}
      </div>
      {onClear && value !== undefined && (
        <div>
          <button type="button" class="button" onClick={onClear}>
            No {label.toLowerCase()}
          </button>
        </div>
      )}
    </fieldset>
  );
}
