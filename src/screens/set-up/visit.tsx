import { Choices } from "../../ui/choices.tsx";
import { formatClock } from "../../ui/format.ts";
import { TextField } from "../../ui/text-field.tsx";
import { setUpWords } from "../../words/set-up.ts";
import type { App } from "../app.ts";
import { endAt } from "./end-time.ts";
import { HeavyStepper, LengthStepper } from "./quantities.tsx";

const { visit: words } = setUpWords;

const METHODS = [
  { value: undefined, name: words.kinds.none },
  { value: "match", name: words.kinds.match },
  { value: "practice", name: words.kinds.practice },
  { value: "coaching", name: words.kinds.coaching },
] as const;

/** Half a day: a start that was set in the morning is not taken for tomorrow's. */
const HALF_DAY_MS = 12 * 3_600_000;

/** Where, how and from when until when. */
export function Visit({ app }: { app: App }) {
  const { plan, startedAt } = app.session.value;
  const { weight, length } = app.settings.value;
  const saveStart = (clock: string) =>
    app.setPlan({ startsAt: endAt(clock, (startedAt ?? app.now.peek()) - HALF_DAY_MS) ?? null });
  const saveEnd = (clock: string) =>
    app.setPlan({ endsAt: endAt(clock, startedAt ?? app.now.peek()) ?? null });
  return (
    <section class="ticket">
      <h2>{words.title}</h2>
      <TextField
        label={words.water}
        value={plan.water ?? ""}
        onSave={(water) => app.setPlan({ water: water || null })}
      />
      <TextField
        label={words.peg}
        value={plan.peg ?? ""}
        onSave={(peg) => app.setPlan({ peg: peg || null })}
      />
      <Choices
        label={words.kind}
        options={METHODS}
        value={plan.method ?? undefined}
        onChange={(method) => app.setPlan({ method: method ?? null })}
      />
      <TextField
        label={words.starts}
        of="time"
        value={plan.startsAt ? formatClock(plan.startsAt) : ""}
        onSave={saveStart}
      />
      <TextField
        label={words.ends}
        of="time"
        value={plan.endsAt ? formatClock(plan.endsAt) : ""}
        onSave={saveEnd}
      />
      <HeavyStepper
        label={words.target}
        value={plan.targetG}
        style={weight}
        onChange={(targetG) => app.setPlan({ targetG })}
        onClear={() => app.setPlan({ targetG: null })}
      />
      <LengthStepper
        label={words.depth}
        value={plan.waterDepthMm}
        style={length}
        onChange={(waterDepthMm) => app.setPlan({ waterDepthMm })}
        onClear={() => app.setPlan({ waterDepthMm: null })}
        isDeep
      />
    </section>
  );
}
