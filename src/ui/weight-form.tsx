import { useId, useState } from "preact/hooks";
import { GRAMS_PER_POUND, type WeightStyle } from "./format.ts";

interface WeightFormProps {
  label: string;
  style: WeightStyle;
  save: string;
  onSave: (grams: number) => void;
}

/** The numbers asked for, with the grams in one of each. */
const PARTS = {
  "lb-oz": [
    { unit: "lb", size: GRAMS_PER_POUND },
    { unit: "oz", size: GRAMS_PER_POUND / 16 },
  ],
  kg: [{ unit: "kg", size: 1000 }],
} as const satisfies Record<WeightStyle, readonly { unit: string; size: number }[]>;

/** A weight read off the scales, typed in and then entered. */
export function WeightForm({ label, style, save, onSave }: WeightFormProps) {
  const id = useId();
  const [texts, setTexts] = useState<Readonly<Record<string, string>>>({});
  const parts = PARTS[style];
  const grams = gramsOf(parts, texts);
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
        <div class="row">
          {parts.map(({ unit }) => (
            <span class="with-unit" key={unit}>
              <input
                id={`${id}-${unit}`}
                class="input weight-part"
                inputMode="decimal"
                autocomplete="off"
                aria-label={`${label}, ${unit}`}
                value={texts[unit] ?? ""}
                onInput={({ currentTarget: { value } }) =>
                  setTexts((before) => ({ ...before, [unit]: value }))
                }
              />
              <span aria-hidden="true">{unit}</span>
            </span>
          ))}
          <button type="submit" class="button button-main" disabled={grams === undefined}>
            {save}
          </button>
        </div>
      </fieldset>
    </form>
  );
}

/** Undefined while nothing, or anything but numbers from 0 up, is typed. */
function gramsOf(
  parts: readonly { unit: string; size: number }[],
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
