import { floating, shotLoad } from "../../analysis/shotting/floating.ts";
import { POLE_FLOATS, SHOT } from "../../analysis/shotting/shot.ts";
import type { PlanRig } from "../../log/event.ts";
import { TextField } from "../../ui/text-field.tsx";
import { setUpWords } from "../../words/set-up.ts";
import type { App } from "../app.ts";
import { PickOne } from "../pick-one.tsx";
import { useDraft } from "./draft.ts";
import { CountStepper, LengthStepper } from "./quantities.tsx";

const { rigs: words } = setUpWords;

/** Rigs as they were made up: how deep, which float, which shot, and whether it floats. */
export function Rigs({ app }: { app: App }) {
  const [rigs, save] = useDraft<readonly PlanRig[]>(app.session.value.plan.rigs ?? [], (next) =>
    app.setPlan({ rigs: next.length > 0 ? [...next] : null }),
  );
  const put = (at: number, rig: PlanRig) => save(rigs.with(at, rig));
  return (
    <section class="ticket">
      <h2>{words.title}</h2>
      <p>{words.about}</p>
      {rigs.map((rig, at) => (
        <RigCard
          // A rig is told by its place: its name may be changed.
          key={at}
          app={app}
          rig={rig}
          onChange={(next) => put(at, next)}
          onTakeOut={() => save(rigs.toSpliced(at, 1))}
        />
      ))}
      <button
        type="button"
        class="button button-main"
        onClick={() => save([...rigs, { name: freeName(rigs), shots: [] }])}
      >
        {words.add}
      </button>
      <p>{words.source}</p>
    </section>
  );
}

/** The least number that no rig has. */
function freeName(rigs: readonly PlanRig[]): string {
  const taken = new Set(rigs.map(({ name }) => name));
  let number = 1;
  while (taken.has(String(number))) number += 1;
  return String(number);
}

const titleOf = ({ name }: PlanRig): string => (/^\d+$/.test(name) ? words.numbered(name) : name);

interface RigCardProps {
  app: App;
  rig: PlanRig;
  onChange: (rig: PlanRig) => void;
  onTakeOut: () => void;
}

function RigCard({ app, rig, onChange, onTakeOut }: RigCardProps) {
  const { depthMm: _depth, ...noDepth } = rig;
  return (
    <details>
      <summary>
        {titleOf(rig)}. {words.verdicts[verdictOn(rig)]}
      </summary>
      <div class="stack">
        <TextField
          label={words.name}
          value={rig.name}
          onSave={(name) => name && onChange({ ...rig, name })}
          hint={words.nameHint}
        />
        <LengthStepper
          label={words.depth}
          value={rig.depthMm}
          style={app.settings.value.length}
          onChange={(depthMm) => onChange({ ...rig, depthMm })}
          onClear={() => onChange(noDepth)}
        />
        <FloatChoice rig={rig} onChange={onChange} />
        <ShotList rig={rig} onChange={onChange} />
        <button type="button" class="button button-take-out" onClick={onTakeOut}>
          {words.takeOut(titleOf(rig))}
        </button>
      </div>
    </details>
  );
}

const verdictOn = ({ float, shots }: PlanRig) => (float ? floating(float, shots) : "unknown");

type PartProps = Pick<RigCardProps, "rig" | "onChange">;

const grams = (value: number): string => String(Number(value.toFixed(3)));

function FloatChoice({ rig, onChange }: PartProps) {
  const { float } = rig;
  const choose = (label: string) => {
    const carries = POLE_FLOATS[label];
    if (carries) onChange({ ...rig, float: { label, ...carries } });
  };
  return (
    <>
      <PickOne
        label={words.float}
        options={Object.keys(POLE_FLOATS).map((label) => ({ value: label, name: label }))}
        onPick={choose}
      />
      <p>
        {float ? (
          <>
            <strong>{float.label}</strong> {words.carries(grams(float.lower), grams(float.upper))}
          </>
        ) : (
          words.noFloat
        )}
      </p>
    </>
  );
}

const shotName = (size: string): string =>
  /^\d+$/.test(size) ? words.shot(size) : words.lettered(size);

function ShotList({ rig, onChange }: PartProps) {
  const { shots } = rig;
  const { lower, upper } = shotLoad(shots);
  const put = (size: string, count: number) => {
    const others = shots.filter((one) => one.size !== size);
    const at = shots.findIndex((one) => one.size === size);
    if (count === 0) onChange({ ...rig, shots: others });
    else if (at < 0) onChange({ ...rig, shots: [...shots, { size, count }] });
    else onChange({ ...rig, shots: shots.with(at, { size, count }) });
  };
  return (
    <>
      {shots.map(({ size, count }) => (
        <CountStepper
          key={size}
          label={shotName(size)}
          value={count}
          least={0}
          onChange={(value) => put(size, value)}
        />
      ))}
      <PickOne
        label={words.addShot}
        options={Object.keys(SHOT)
          .filter((size) => !shots.some((one) => one.size === size))
          .map((size) => ({ value: size, name: shotName(size) }))}
        onPick={(size) => put(size, 1)}
      />
      <p role="status">
        {words.load(grams(lower), grams(upper))}. {words.verdicts[verdictOn(rig)]}
      </p>
    </>
  );
}
