import { useId } from "preact/hooks";
import { controlWords } from "../words/controls.ts";
import { HoldButton } from "./hold-button.tsx";

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
  /** The least and the greatest value, beyond which no press goes. */
  least: number;
  most?: number;
  onChange: (value: number) => void;
  /** Present where the value may be taken away again. */
  onClear?: () => void;
}

/**
 * A quantity set by pressing, for cold fingers: coarse steps outside, fine ones beside the value.
 * A button that is held goes on stepping.
 */
export function Stepper(props: StepperProps) {
  const { label, value, format, steps, from, least, onChange, onClear } = props;
  const { most = Number.POSITIVE_INFINITY } = props;
  const id = useId();
  const press = (by: number) => onChange(Math.min(most, Math.max(least, (value ?? from) + by)));
  const button = (by: number, name: string) => (
    <HoldButton
      key={by}
      label={by < 0 ? controlWords.down(label, name) : controlWords.up(label, name)}
      onPress={() => press(by)}
    >
      {`${by < 0 ? "−" : "+"}${name}`.split(" ").map((part) => (
        <span key={part}>{part} </span>
      ))}
    </HoldButton>
  );
  return (
    <fieldset class="field">
      <legend id={id}>{label}</legend>
      <div class="stepper">
        {steps.map(({ by, name }) => button(-by, name))}
        <output aria-labelledby={id}>
          {value === undefined ? controlWords.notSaid : format(value)}
        </output>
        {[...steps].reverse().map(({ by, name }) => button(by, name))}
      </div>
      {onClear && value !== undefined && (
        <div>
          <button type="button" class="button" onClick={onClear}>
            {controlWords.none(label)}
          </button>
        </div>
      )}
    </fieldset>
  );
}
