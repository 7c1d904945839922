import { useState } from "preact/hooks";
import { timedSpeed } from "../../analysis/sinking/bite-depth.ts";
import { fallSpeed } from "../../analysis/sinking/fall.ts";
import { waterTemperature } from "../../analysis/sinking/session-bites.ts";
import { waterAt } from "../../analysis/sinking/water.ts";
import { Choices } from "../../ui/choices.tsx";
import { Stepper } from "../../ui/stepper.tsx";
import { setUpWords } from "../../words/set-up.ts";
import type { App } from "../app.ts";
import { baitNames } from "../names.ts";
import { PickOne } from "../pick-one.tsx";
import { LengthStepper } from "./quantities.tsx";

const { sinking: words, steps } = setUpWords;

/** "12", "8.5": centimetres a second from metres a second. */
const shown = (speed: number): string => String(Number((100 * speed).toFixed(speed < 0.1 ? 1 : 0)));

/** How fast each bait sinks, by timing one or worked out, kept with the bait. */
export function Sinking({ app }: { app: App }) {
  const { plan, setUp } = app.session.value;
  const [bait, setBait] = useState(setUp.bait);
  const speeds = plan.fallSpeeds ?? {};
  const save = (speed: number) => bait && app.setPlan({ fallSpeeds: { ...speeds, [bait]: speed } });
  const without = (name: string) => {
    const { [name]: _gone, ...others } = speeds;
    return app.setPlan({ fallSpeeds: Object.keys(others).length > 0 ? others : null });
  };
  return (
    <section class="ticket">
      <h2>{words.title}</h2>
      <p>{words.about}</p>
      {Object.entries(speeds).map(([name, speed]) => (
        <div class="row row-apart" key={name}>
          <strong>{words.speed(name, shown(speed))}</strong>
          <button type="button" class="button button-take-out" onClick={() => without(name)}>
            {setUpWords.rigs.takeOut(name)}
          </button>
        </div>
      ))}
      <PickOne
        label={words.bait}
        options={baitNames(plan).map((name) => ({ value: name, name }))}
        onPick={setBait}
      />
      {bait !== undefined && (
        <>
          <h3>{bait}</h3>
          <Timing app={app} onTimed={save} />
          <WorkedOut app={app} onTake={save} />
        </>
      )}
    </section>
  );
}

/** From where the first timing falls: half a metre shows in a margin net. */
const FALL_MM = 500;

/** Faster than this a thumb times itself, in seconds; our own choice. */
const LEAST_S = 0.5;

function Timing({ app, onTimed }: { app: App; onTimed: (speed: number) => void }) {
  const [depthMm, setDepth] = useState(FALL_MM);
  const [since, setSince] = useState<number>();
  const [isTooShort, setTooShort] = useState(false);
  const stop = (from: number) => {
    const seconds = (performance.now() - from) / 1000;
    const speed = timedSpeed(depthMm, seconds);
    setSince(undefined);
    setTooShort(seconds < LEAST_S);
    if (speed !== undefined && seconds >= LEAST_S) onTimed(speed);
  };
  return (
    <>
      <LengthStepper
        label={words.depth}
        value={depthMm}
        style={app.settings.value.length}
        onChange={setDepth}
      />
      <button
        type="button"
        class="button button-main"
        onClick={() => (since === undefined ? setSince(performance.now()) : stop(since))}
      >
        {since === undefined ? words.start : words.stop}
      </button>
      {isTooShort && <p role="status">{words.tooShort}</p>}
    </>
  );
}

/** kg/m³ of a pellet; from memory, choices of our own. */
const DENSITIES = { slow: 1050, usual: 1150, heavy: 1300 } as const;

const WATER_C = 15;

function WorkedOut({ app, onTake }: { app: App; onTake: (speed: number) => void }) {
  const [mm, setMm] = useState(6);
  const [density, setDensity] = useState<keyof typeof DENSITIES>("usual");
  const [celsius, setCelsius] = useState(waterTemperature(app.session.value) ?? WATER_C);
  const speed = fallSpeed({ diameter: mm / 1000, density: DENSITIES[density] }, waterAt(celsius));
  return (
    <details>
      <summary>{words.orWorkOut}</summary>
      <div class="stack">
        <Stepper
          label={words.size}
          value={mm}
          format={setUpWords.millimetres}
          steps={[{ by: 1, name: steps.millimetre }]}
          from={mm}
          least={1}
          most={30}
          onChange={setMm}
        />
        <Choices
          label={words.density}
          options={(Object.keys(DENSITIES) as (keyof typeof DENSITIES)[]).map((value) => ({
            value,
            name: words.densities[value],
          }))}
          value={density}
          onChange={setDensity}
        />
        <Stepper
          label={words.water}
          value={celsius}
          format={setUpWords.degrees}
          steps={[
            { by: 5, name: steps.fiveDegrees },
            { by: 1, name: steps.degree },
          ]}
          from={celsius}
          least={0}
          most={40}
          onChange={setCelsius}
        />
        <p role="status">{words.worked(shown(speed))}</p>
        <button type="button" class="button" onClick={() => onTake(speed)}>
          {words.workOut}
        </button>
      </div>
    </details>
  );
}
