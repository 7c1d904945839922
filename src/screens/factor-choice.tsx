import type { Factor } from "../analysis/effort/exposure.ts";
import { Choices } from "../ui/choices.tsx";
import { chartWords } from "../words/charts.ts";

interface FactorChoiceProps<F extends Factor> {
  label: string;
  factors: readonly F[];
  value: F;
  onChange: (factor: F) => void;
}

/** What to set side by side. */
export function FactorChoice<F extends Factor>(props: FactorChoiceProps<F>) {
  const { label, factors, value, onChange } = props;
  const options = factors.map((factor) => ({
    value: factor,
    name: chartWords.rates.factors[factor],
  }));
  return <Choices label={label} options={options} value={value} onChange={onChange} />;
}
