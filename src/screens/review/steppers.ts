/** How each quantity is stepped: coarse and fine, in the unit in which it is shown. */
import {
  formatDistance,
  formatLength,
  formatWeight,
  GRAMS_PER_POUND,
  type LengthStyle,
  MM_PER_INCH,
  type WeightStyle,
} from "../../ui/format.ts";
import type { Step } from "../../ui/stepper.tsx";
import { fieldWords } from "../../words/entry-fields.ts";
import type { FieldKind } from "./fields.ts";

export interface Stepping {
  steps: readonly Step[];
  format: (value: number) => string;
  /** The first press starts from here. */
  from: number;
  least: number;
}

interface Styles {
  weight: WeightStyle;
  length: LengthStyle;
}

const { steps: named } = fieldWords;

const METRES: readonly Step[] = [
  { by: 1000, name: named.metre },
  { by: 500, name: named.halfMetre },
];

/** Undefined for a field that is no quantity. */
export function steppingOf(is: FieldKind["is"], { weight, length }: Styles): Stepping | undefined {
  const lengths = lengthSteps(length);
  const fine = lengths[1]?.by ?? 1;
  const show = (mm: number) => formatLength(mm, length);
  switch (is) {
    case "weight": {
      const steps = weightSteps(weight);
      const format = (grams: number) => formatWeight(grams, weight, "quarter");
      return { steps, format, from: 0, least: steps[1]?.by ?? 1 };
    }
    case "length":
    case "depth":
      return { steps: lengths, format: show, from: 0, least: fine };
    case "depth-by":
      return { steps: lengths, format: signed(show), from: 0, least: Number.NEGATIVE_INFINITY };
    case "distance":
      return { steps: METRES, format: formatDistance, from: 0, least: 500 };
    case "distance-by":
      return {
        steps: METRES,
        format: signed(formatDistance),
        from: 0,
        least: Number.NEGATIVE_INFINITY,
      };
    case "count":
      return { steps: [{ by: 1, name: named.one }], format: String, from: 0, least: 1 };
    case "degrees":
      return {
        steps: [
          { by: 5, name: named.fiveDegrees },
          { by: 1, name: named.degree },
        ],
        format: fieldWords.degrees,
        from: 10,
        least: -30,
      };
    case "minutes":
      return {
        steps: [
          { by: 300_000, name: named.fiveMinutes },
          { by: 60_000, name: named.minute },
        ],
        format: (ms) => fieldWords.minutes(ms / 60_000),
        from: 0,
        least: 0,
      };
    default:
      return undefined;
  }
}

const weightSteps = (style: WeightStyle): Step[] =>
  style === "kg"
    ? [
        { by: 500, name: named.halfKilo },
        { by: 50, name: named.grams },
      ]
    : [
        { by: GRAMS_PER_POUND, name: named.pound },
        { by: GRAMS_PER_POUND / 16, name: named.ounce },
      ];

const lengthSteps = (style: LengthStyle): Step[] =>
  style === "in"
    ? [
        { by: 6 * MM_PER_INCH, name: named.halfFoot },
        { by: MM_PER_INCH, name: named.inch },
      ]
    : [
        { by: 100, name: named.tenCentimetres },
        { by: 10, name: named.centimetre },
      ];

const signed = (format: (mm: number) => string) => (mm: number) =>
  `${mm < 0 ? "−" : "+"}${format(Math.abs(mm))}`;
