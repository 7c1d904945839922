import { useState } from "preact/hooks";
import { NumberField } from "../../ui/text-field.tsx";
import { lengthUnit, weightUnit } from "../../ui/units.ts";
import type { App } from "../app.ts";
import { baitNames } from "../names.ts";
import { PickOne } from "../pick-one.tsx";

/** The fishery's rules, to be warned by. */
export function Limits({ app }: { app: App }) {
  const { plan } = app.session.value;
  const { weight, length } = app.settings.value;
  const pounds = weightUnit(weight);
  const centimetres = lengthUnit(length);
  return (
    <section class="ticket">
      <h2>The fishery’s limits</h2>
      <NumberField
        label="Most in one net"
        unit={pounds.name}
        value={plan.netLimitG ? plan.netLimitG / pounds.size : undefined}
        onSave={(value) => app.setPlan({ netLimitG: value ? value * pounds.size : null })}
      />
      <NumberField
        label="Most line above the float"
        unit={centimetres.name}
        value={plan.lashLimitMm ? plan.lashLimitMm / centimetres.size : undefined}
        onSave={(value) => app.setPlan({ lashLimitMm: value ? value * centimetres.size : null })}
      />
      <BaitLimits app={app} />
    </section>
  );
}

function BaitLimits({ app }: { app: App }) {
  const { plan } = app.session.value;
  const limits = plan.baitLimitsG ?? {};
  const unit = weightUnit(app.settings.value.weight);
  const [opened, setOpened] = useState<readonly string[]>([]);
  const shown = [...new Set([...Object.keys(limits), ...opened])];
  const save = (bait: string, value: number | undefined) => {
    const { [bait]: _before, ...others } = limits;
    const after = value === undefined ? others : { ...others, [bait]: value * unit.size };
    return app.setPlan({ baitLimitsG: Object.keys(after).length > 0 ? after : null });
  };
  return (
    <section class="stack">
      <h3>Bait</h3>
      {shown.map((bait) => (
        <NumberField
          key={bait}
          label={`Most ${bait}`}
          unit={unit.name}
          value={limits[bait] === undefined ? undefined : limits[bait] / unit.size}
          onSave={(value) => save(bait, value)}
          hint="Empty takes the limit away."
        />
      ))}
      <PickOne
        label="Add a limit for a bait"
        options={baitNames(plan)
          .filter((bait) => !shown.includes(bait))
          .map((bait) => ({ value: bait, name: bait }))}
        onPick={(bait) => setOpened([...opened, bait])}
      />
    </section>
  );
}
