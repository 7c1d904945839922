/** Which fields an entry of each kind has, and how each is set by touch. */
import { FEED_WAYS, LOSS_CAUSES, SESSION_ACTS, SIGN_SORTS } from "../../../grammar/statement.ts";
import type { EntryStatement } from "../../log/event.ts";

export type FieldKind =
  | { is: "weight" | "length" | "depth" | "distance" | "count" | "degrees" | "minutes" }
  | { is: "depth-by" | "distance-by" }
  | { is: "text" | "tick" }
  | { is: "name"; of: "species" | "bait" | "rig" }
  | { is: "choice"; options: readonly { value: string; name: string }[] };

export type Field = FieldKind & {
  name: string;
  label: string;
  /** Cannot be left out. */
  isNeeded?: true;
};

const CAUSE_NAMES = {
  off: "Came off",
  pulled: "Hook pulled",
  snapped: "Snapped",
  foul: "Foul hooked",
  net: "At the net",
} as const satisfies Record<(typeof LOSS_CAUSES)[number], string>;

const SORT_NAMES = {
  bite: "Bite",
  missed: "Missed",
  knock: "Knock",
  liner: "Liner",
} as const satisfies Record<(typeof SIGN_SORTS)[number], string>;

const WAY_NAMES = {
  catapult: "Catapult",
  pot: "Pot",
  hand: "By hand",
} as const satisfies Record<(typeof FEED_WAYS)[number], string>;

const ACT_NAMES = {
  start: "Start",
  pause: "Break",
  resume: "Back on",
  stop: "All out",
} as const satisfies Record<(typeof SESSION_ACTS)[number], string>;

const options = <V extends string>(values: readonly V[], names: Readonly<Record<V, string>>) =>
  values.map((value) => ({ value, name: names[value] }));

const species: Field = { name: "species", label: "Species", is: "name", of: "species" };
const bait: Field = { name: "bait", label: "Bait", is: "name", of: "bait" };
const baitNote: Field = { name: "baitNote", label: "Which bait", is: "text" };

export const FIELDS: Readonly<Record<EntryStatement["kind"], readonly Field[]>> = {
  fish: [
    species,
    { name: "weightG", label: "Weight", is: "weight" },
    { name: "lengthMm", label: "Length", is: "length" },
    { name: "count", label: "How many", is: "count" },
    { name: "approx", label: "About", is: "tick" },
    { name: "foul", label: "Foul hooked", is: "tick" },
  ],
  loss: [
    {
      name: "cause",
      label: "How it was lost",
      is: "choice",
      options: options(LOSS_CAUSES, CAUSE_NAMES),
      isNeeded: true,
    },
    species,
  ],
  sign: [
    {
      name: "sort",
      label: "What it was",
      is: "choice",
      options: options(SIGN_SORTS, SORT_NAMES),
      isNeeded: true,
    },
  ],
  drop: [],
  feed: [
    bait,
    baitNote,
    { name: "amountG", label: "Amount", is: "weight" },
    { name: "times", label: "Times", is: "count" },
    { name: "how", label: "How", is: "choice", options: options(FEED_WAYS, WAY_NAMES) },
  ],
  change: [
    { name: "rig", label: "Rig", is: "name", of: "rig" },
    { name: "depthMm", label: "Depth", is: "depth" },
    { name: "depthByMm", label: "Depth by", is: "depth-by" },
    { name: "distanceMm", label: "Distance", is: "distance" },
    { name: "distanceByMm", label: "Distance by", is: "distance-by" },
    bait,
    baitNote,
    { name: "hook", label: "Hook", is: "count" },
    { name: "lashMm", label: "Line above the float", is: "depth" },
    { name: "lashByMm", label: "Line above the float by", is: "depth-by" },
  ],
  net: [{ name: "number", label: "Net", is: "count" }],
  conditions: [
    { name: "wind", label: "Wind", is: "text" },
    { name: "sky", label: "Sky", is: "text" },
    { name: "waterC", label: "Water", is: "degrees" },
    { name: "airC", label: "Air", is: "degrees" },
  ],
  note: [{ name: "text", label: "Note", is: "text", isNeeded: true }],
  session: [
    {
      name: "act",
      label: "What",
      is: "choice",
      options: options(SESSION_ACTS, ACT_NAMES),
      isNeeded: true,
    },
  ],
  remind: [
    { name: "everyMs", label: "Every", is: "minutes", isNeeded: true },
    { name: "about", label: "About", is: "text" },
  ],
};

/** Said as a value or as a step, never as both. */
export const EITHER: Readonly<Record<string, string>> = {
  depthMm: "depthByMm",
  distanceMm: "distanceByMm",
  lashMm: "lashByMm",
};

/** The fields to show: of a value and a step, the one that was said. */
export function fieldsOf(statement: EntryStatement): Field[] {
  const said = new Set(Object.keys(statement));
  const steps = Object.values(EITHER);
  return FIELDS[statement.kind].filter(({ name }) => {
    const step = EITHER[name];
    if (step !== undefined) return !said.has(step);
    return !steps.includes(name) || said.has(name);
  });
}

/** What a new entry of a kind starts as, with what it cannot do without. */
export const NEW_ENTRIES: readonly { name: string; statement: EntryStatement }[] = [
  { name: "Fish", statement: { kind: "fish" } },
  { name: "Lost fish", statement: { kind: "loss", cause: "off" } },
  { name: "Change", statement: { kind: "change" } },
  { name: "Feed", statement: { kind: "feed" } },
  { name: "Bite", statement: { kind: "sign", sort: "bite" } },
  { name: "Rig in", statement: { kind: "drop" } },
  { name: "Net", statement: { kind: "net" } },
  { name: "Weather", statement: { kind: "conditions" } },
  { name: "Note", statement: { kind: "note", text: "" } },
  { name: "Start, break or end", statement: { kind: "session", act: "pause" } },
  { name: "Nudge", statement: { kind: "remind", everyMs: 180_000 } },
];
