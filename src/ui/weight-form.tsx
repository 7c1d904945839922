import { useId, useState } from "preact/hooks";
import { controlWords } from "../words/controls.ts";
import { fieldWords } from "../words/entry-fields.ts";
import { GRAMS_PER_POUND, type WeightStyle } from "./format.ts";
import { HoldButton } from "./hold-button.tsx";

interface WeightFormProps {
  label: string;
  style: WeightStyle;
  /** Grams that the first press steps from. */
  from: number;
  save: string;
  onSave: (grams: number) => void;
}

interface Part {
  unit: string;
  /** Grams in one of it. */
  size: number;
  /** Grams that one press goes, and what that is called. */
  step: number;
  stepName: string;
}

const { steps } = fieldWords;

const OUNCE_G = GRAMS_PER_POUND / 16;

/** The numbers asked for, the largest unit first. */
const PARTS: Readonly<Record<WeightStyle, readonly Part[]>> = {
  "lb-oz": [
    { unit: "lb", size: GRAMS_PER_POUND, step: GRAMS_PER_POUND, stepName: steps.pound },
    { unit: "oz", size: OUNCE_G, step: OUNCE_G, stepName: steps.ounce },
  ],
  kg: [{ unit: "kg", size: 1000, step: 50, stepName: steps.grams }],
};

/** A weight read off the scales, typed or stepped, and then entered. */
export function WeightForm({ label, style, from, save, onSave }: WeightFormProps) {
  const id = useId();
  const [texts, setTexts] = useState<Readonly<Record<string, string>>>({});
  const parts = PARTS[style];
  const grams = gramsOf(parts, texts);
  const press = (by: number) =>
    setTexts((before) => textsOf(parts, Math.max(0, (gramsOf(parts, before) ?? from) + by)));
  const enter = (event: Event) => {
    event.preventDefault();
    if (grams === undefined) return;
    onSave(grams);
    setTexts({});
  };
  return (
    <form class="weight-form" onSubmit={enter}>
      <fieldset class="field">
        <legend>{label}</legend>
        {parts.map(({ unit, step, stepName }) => {
          const name = controlWords.part(label, unit);
          return (
            <div class="weight-part" key={unit}>
              <HoldButton label={controlWords.down(label, stepName)} onPress={() => press(-step)}>
                −
              </HoldButton>
              <input
                id={`${id}-${unit}`}
                class="input"
                inputMode="decimal"
                autocomplete="off"
                aria-label={name}
                value={texts[unit] ?? ""}
                onInput={({ currentTarget: { value } }) =>
                  setTexts((before) => ({ ...before, [unit]: value }))
                }
              />
              <span aria-hidden="true">{unit}</span>
              <HoldButton label={controlWords.up(label, stepName)} onPress={() => press(step)}>
                +
              </HoldButton>
            </div>
          );
        })}
        <button type="submit" class="button button-main" disabled={grams === undefined}>
          {save}
        </button>
      </fieldset>
    </form>
  );
}

/** Undefined while nothing, or anything but numbers from 0 up, is typed. */
function gramsOf(
  parts: readonly Part[],
  texts: Readonly<Record<string, string>>,
): number | undefined {
  const typed = parts.map(({ unit, size }) => ({ text: texts[unit]?.trim() ?? "", size }));
  if (typed.every(({ text }) => text === "")) return undefined;
  const grams = typed.reduce(
    (total, { text, size }) => total + Number(text.replace(",", ".")) * size,
    0,
  );
  const isSound = typed.every(({ text }) => Number(text.replace(",", ".")) >= 0);
  return isSound && Number.isFinite(grams) ? grams : undefined;
}

/** The whole weight in the parts' units: whole ones, and of the last to hundredths of a kilo. */
function textsOf(parts: readonly Part[], grams: number): Record<string, string> {
  const smallest = parts.at(-1)?.step ?? 1;
  let left = Math.round(grams / smallest) * smallest;
  return Object.fromEntries(
    parts.map(({ unit, size, step }, place) => {
      const isLast = place === parts.length - 1;
      // A hair more than a whole pound must not become 15.999 oz.
      const whole = isLast
        ? Math.round(left / step) * (step / size)
        : Math.floor(left / size + 1e-9);
      left -= whole * size;
      return [unit, String(Number(whole.toFixed(2)))];
    }),
  );
}
