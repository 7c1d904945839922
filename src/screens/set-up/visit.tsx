import { Choices } from "../../ui/choices.tsx";
import { formatClock } from "../../ui/format.ts";
import { NumberField, TextField } from "../../ui/text-field.tsx";
import { depthUnit, weightUnit } from "../../ui/units.ts";
import type { App } from "../app.ts";
import { endAt } from "./end-time.ts";

const METHODS = [
  { value: undefined, name: "Not said" },
  { value: "match", name: "Match" },
  { value: "practice", name: "Practice" },
  { value: "coaching", name: "Coaching" },
] as const;

/** Where, how and until when. */
export function Visit({ app }: { app: App }) {
  const { plan, startedAt } = app.session.value;
  const { weight, length } = app.settings.value;
  const pounds = weightUnit(weight);
  const metres = depthUnit(length);
  const saveEnd = (clock: string) =>
    app.setPlan({ endsAt: endAt(clock, startedAt ?? app.now.peek()) ?? null });
  return (
    <section class="ticket">
      <h2>The visit</h2>
      <TextField
        label="Water"
        value={plan.water ?? ""}
        onSave={(water) => app.setPlan({ water: water || null })}
      />
      <TextField
        label="Peg"
        value={plan.peg ?? ""}
        onSave={(peg) => app.setPlan({ peg: peg || null })}
      />
      <Choices
        label="Kind of session"
        options={METHODS}
        value={plan.method ?? undefined}
        onChange={(method) => app.setPlan({ method: method ?? null })}
      />
      <TextField
        label="Ends at"
        of="time"
        value={plan.endsAt ? formatClock(plan.endsAt) : ""}
        onSave={saveEnd}
      />
      <NumberField
        label="Target weight"
        unit={pounds.name}
        value={plan.targetG ? plan.targetG / pounds.size : undefined}
        onSave={(value) => app.setPlan({ targetG: value ? value * pounds.size : null })}
      />
      <NumberField
        label="Depth of the water"
        unit={metres.name}
        value={plan.waterDepthMm ? plan.waterDepthMm / metres.size : undefined}
        onSave={(value) => app.setPlan({ waterDepthMm: value ? value * metres.size : null })}
      />
    </section>
  );
}
