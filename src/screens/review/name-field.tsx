import { sayName } from "../../../grammar/saying/fish.ts";
import type { Session } from "../../log/session.ts";
import { Choices } from "../../ui/choices.tsx";
import { reviewWords } from "../../words/review.ts";
import type { App } from "../app.ts";
import { baitNames, rigNames, speciesNames } from "../names.ts";

const { editor: words } = reviewWords;

type NameOf = "species" | "bait" | "rig";

interface NameFieldProps {
  app: App;
  label: string;
  of: NameOf;
  value: string | undefined;
  onChange: (value: string | undefined) => void;
}

/** A species, bait or rig, all in sight: a list would be one touch more. Those of the day first. */
export function NameField({ app, label, of, value, onChange }: NameFieldProps) {
  const names = namesOf(of, app.session.value);
  if (value !== undefined && !names.includes(value)) names.push(value);
  return (
    <Choices<string | undefined>
      label={label}
      options={[...names.map(optionOf), { value: undefined, name: words.notSaid }]}
      value={value}
      onChange={onChange}
    />
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
