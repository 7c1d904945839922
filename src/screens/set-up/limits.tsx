import { setUpWords } from "../../words/set-up.ts";
import type { App } from "../app.ts";
import { baitNames } from "../names.ts";
import { PickOne } from "../pick-one.tsx";
import { CountStepper, HeavyStepper, LengthStepper } from "./quantities.tsx";

const { limits: words } = setUpWords;

/** The fishery's rules, to be warned by. */
export function Limits({ app }: { app: App }) {
  const { plan } = app.session.value;
  const { weight, length } = app.settings.value;
  return (
    <section class="ticket">
      <h2>{words.title}</h2>
      <p>{words.about}</p>
      <HeavyStepper
        label={words.net}
        value={plan.netLimitG}
        style={weight}
        onChange={(netLimitG) => app.setPlan({ netLimitG })}
        onClear={() => app.setPlan({ netLimitG: null })}
      />
      <CountStepper
        label={words.nets}
        value={plan.netsAllowed}
        least={1}
        onChange={(netsAllowed) => app.setPlan({ netsAllowed })}
        onClear={() => app.setPlan({ netsAllowed: null })}
      />
      <LengthStepper
        label={words.lash}
        value={plan.lashLimitMm}
        style={length}
        onChange={(lashLimitMm) => app.setPlan({ lashLimitMm })}
        onClear={() => app.setPlan({ lashLimitMm: null })}
      />
      <BaitLimits app={app} />
      <BannedBaits app={app} />
    </section>
  );
}

const options = (names: readonly string[], taken: readonly string[]) =>
  names.filter((name) => !taken.includes(name)).map((name) => ({ value: name, name }));

/** Where the first press on a bait's limit starts from, in grams. */
const BAIT_FROM_G = 1000;

function BaitLimits({ app }: { app: App }) {
  const { plan } = app.session.value;
  const limits = plan.baitLimitsG ?? {};
  const save = (after: Readonly<Record<string, number>>) =>
    app.setPlan({ baitLimitsG: Object.keys(after).length > 0 ? after : null });
  const without = (bait: string) =>
    Object.fromEntries(Object.entries(limits).filter(([name]) => name !== bait));
  return (
    <section class="stack">
      <h3>{words.bait}</h3>
      {Object.entries(limits).map(([bait, grams]) => (
        <HeavyStepper
          key={bait}
          label={words.most(bait)}
          value={grams}
          style={app.settings.value.weight}
          onChange={(value) => save({ ...limits, [bait]: value })}
          onClear={() => save(without(bait))}
        />
      ))}
      <PickOne
        label={words.addLimit}
        options={options(baitNames(plan), Object.keys(limits))}
        onPick={(bait) => save({ ...limits, [bait]: BAIT_FROM_G })}
      />
    </section>
  );
}

function BannedBaits({ app }: { app: App }) {
  const { plan } = app.session.value;
  const banned = plan.baitsBanned ?? [];
  const save = (baits: readonly string[]) =>
    app.setPlan({ baitsBanned: baits.length > 0 ? [...baits] : null });
  return (
    <section class="stack">
      <h3>{words.banned}</h3>
      {banned.map((bait) => (
        <div class="row row-apart" key={bait}>
          <strong>{bait}</strong>
          <button
            type="button"
            class="button"
            onClick={() => save(banned.filter((one) => one !== bait))}
          >
            {words.allow(bait)}
          </button>
        </div>
      ))}
      <PickOne
        label={words.addBanned}
        options={options(baitNames(plan), banned)}
        onPick={(bait) => save([...banned, bait])}
      />
    </section>
  );
}
