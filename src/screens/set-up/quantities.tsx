/** Quantities of a plan, set by pressing in the angler's units. */
import {
  formatLength,
  formatWeight,
  GRAMS_PER_POUND,
  type LengthStyle,
  MM_PER_INCH,
  type WeightStyle,
} from "../../ui/format.ts";
import { type Step, Stepper } from "../../ui/stepper.tsx";
import { setUpWords } from "../../words/set-up.ts";

const { steps: named } = setUpWords;

const MM_PER_FOOT = 12 * MM_PER_INCH;

interface QuantityProps<Style> {
  label: string;
  /** Grams or millimetres; absent where none is set. */
  value: number | null | undefined;
  style: Style;
  onChange: (value: number) => void;
  /** Present where the value may be taken away again. */
  onClear?: () => void;
}

const POUNDS: readonly Step[] = [
  { by: 10 * GRAMS_PER_POUND, name: named.tenPounds },
  { by: GRAMS_PER_POUND, name: named.pound },
];
const KILOS: readonly Step[] = [
  { by: 5000, name: named.fiveKilos },
  { by: 500, name: named.halfKilo },
];

/** A weight of many fish, or of bait: pounds and kilos. */
export function HeavyStepper({
  label,
  value,
  style,
  onChange,
  onClear,
}: QuantityProps<WeightStyle>) {
  const steps = style === "kg" ? KILOS : POUNDS;
  return (
    <Stepper
      label={label}
      value={value ?? undefined}
      format={(grams) => formatWeight(grams, style)}
      steps={steps}
      from={0}
      least={steps[1]?.by ?? 1}
      onChange={onChange}
      {...(onClear && { onClear })}
    />
  );
}

const SHORT: Readonly<Record<LengthStyle, readonly Step[]>> = {
  cm: [
    { by: 100, name: named.tenth },
    { by: 10, name: named.centimetre },
  ],
  in: [
    { by: MM_PER_FOOT, name: named.foot },
    { by: MM_PER_INCH, name: named.inch },
  ],
};
const DEEP: Readonly<Record<LengthStyle, readonly Step[]>> = {
  cm: [
    { by: 500, name: named.half },
    { by: 100, name: named.tenth },
  ],
  in: SHORT.in,
};

interface LengthProps extends QuantityProps<LengthStyle> {
  /** The depth of a water is stepped more coarsely than that of a rig. */
  isDeep?: boolean;
}

/** A length of line, or a depth. */
export function LengthStepper(props: LengthProps) {
  const { label, value, style, onChange, onClear, isDeep = false } = props;
  const steps = (isDeep ? DEEP : SHORT)[style];
  return (
    <Stepper
      label={label}
      value={value ?? undefined}
      format={(mm) => formatLength(mm, style)}
      steps={steps}
      from={0}
      least={steps[1]?.by ?? 1}
      onChange={onChange}
      {...(onClear && { onClear })}
    />
  );
}

interface CountProps {
  label: string;
  value: number | null | undefined;
  least: number;
  onChange: (value: number) => void;
  onClear?: () => void;
}

/** So many of something. */
export function CountStepper({ label, value, least, onChange, onClear }: CountProps) {
  return (
    <Stepper
      label={label}
      value={value ?? undefined}
      format={String}
      steps={[{ by: 1, name: named.one }]}
      from={0}
      least={least}
      onChange={onChange}
      {...(onClear && { onClear })}
    />
  );
}
