import { sayName } from "../../../grammar/saying/fish.ts";
import type { Session } from "../../log/session.ts";
import { Choices } from "../../ui/choices.tsx";
import { reviewWords } from "../../words/review.ts";
import type { App } from "../app.ts";
import { baitNames, rigNames, speciesNames } from "../names.ts";
import { PickOne } from "../pick-one.tsx";

const { editor: words } = reviewWords;

type NameOf = "species" | "bait" | "rig";

interface NameFieldProps {
  app: App;
  label: string;
  of: NameOf;
  value: string | undefined;
  onChange: (value: string | undefined) => void;
}

/** More than these make a long way to the field below; the rest is in a list. */
const MOST_IN_SIGHT = 6;

/** A species, bait or rig: those of the day in sight, all others in a list. */
export function NameField({ app, label, of, value, onChange }: NameFieldProps) {
  const names = namesOf(of, app.session.value);
  const inSight = names.slice(0, MOST_IN_SIGHT);
  if (value !== undefined && !inSight.includes(value)) inSight.push(value);
  const options = [...inSight.map(optionOf), { value: undefined, name: words.notSaid }];
  return (
    <div class="stack">
      <Choices<string | undefined>
        label={label}
        options={options}
        value={value}
        onChange={onChange}
      />
      <PickOne
        label={words.other(label)}
        options={names.filter((name) => !inSight.includes(name)).map(optionOf)}
        onPick={onChange}
      />
    </div>
  );
}

/** A species goes by the name that is said. */
const optionOf = (name: string) => ({ value: name, name: sayName(name) });

/** All names, those used most in the session first. */
function namesOf(of: NameOf, session: Session): string[] {
  const often = namesUsed(of, session);
  const all = { species: speciesNames, bait: baitNames, rig: () => [] }[of](session.plan);
  return of === "rig" ? rigNames(session.plan, often) : [...new Set([...often, ...all])];
}

/** The names used in the session, those used most first. */
export function namesUsed(of: NameOf, { entries }: Session): string[] {
  const used = new Map<string, number>();
  for (const { statement } of entries) {
    const name = of in statement ? (statement as Partial<Record<NameOf, string>>)[of] : undefined;
    if (name !== undefined) used.set(name, (used.get(name) ?? 0) + 1);
  }
  return [...used.keys()].sort((a, b) => (used.get(b) ?? 0) - (used.get(a) ?? 0));
}
