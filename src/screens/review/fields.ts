/** Which fields an entry of each kind has, and how each is set by touch. */
import { FEED_WAYS, LOSS_CAUSES, SESSION_ACTS, SIGN_SORTS } from "../../../grammar/statement.ts";
import type { EntryStatement } from "../../log/event.ts";
import { fieldWords } from "../../words/entry-fields.ts";

export type FieldKind =
  | { is: "weight" | "length" | "depth" | "distance" | "count" | "degrees" | "minutes" }
  | { is: "depth-by" | "distance-by" }
  | { is: "text" | "tick" }
  | { is: "name"; of: "species" | "bait" | "rig" }
  | { is: "choice"; options: readonly Option[] }
  | { is: "unit"; of: "weight" | "length"; options: readonly Option[] };

interface Option {
  value: string;
  name: string;
}

export type Field = FieldKind & {
  name: string;
  label: string;
  /** Cannot be left out. */
  isNeeded?: true;
  /** Shown only once it is said, or more fields are asked for. */
  isRare?: true;
};

const { fields: labels, causes, sorts, ways, acts, units, kinds } = fieldWords;

const options = <V extends string>(values: readonly V[], names: Readonly<Record<V, string>>) =>
  values.map((value) => ({ value, name: names[value] }));

const field = <F extends FieldKind>(name: keyof typeof labels, kind: F): Field => ({
  ...kind,
  name,
  label: labels[name],
});

const needed = (one: Field): Field => ({ ...one, isNeeded: true });
const rare = (one: Field): Field => ({ ...one, isRare: true });

const species = field("species", { is: "name", of: "species" });
const bait = field("bait", { is: "name", of: "bait" });
const baitNote = rare(field("baitNote", { is: "text" }));
const weightUnit = rare(
  field("weightUnit", {
    is: "unit",
    of: "weight",
    options: options(["lb", "oz", "kg", "g"] as const, units),
  }),
);
const lengthUnit = rare(
  field("lengthUnit", {
    is: "unit",
    of: "length",
    options: options(["cm", "m", "in", "ft"] as const, units),
  }),
);

export const FIELDS: Readonly<Record<EntryStatement["kind"], readonly Field[]>> = {
  fish: [
    field("weightG", { is: "weight" }),
    field("lengthMm", { is: "length" }),
    field("count", { is: "count" }),
    species,
    rare(field("approx", { is: "tick" })),
    rare(field("foul", { is: "tick" })),
    weightUnit,
    lengthUnit,
  ],
  loss: [needed(field("cause", { is: "choice", options: options(LOSS_CAUSES, causes) })), species],
  sign: [needed(field("sort", { is: "choice", options: options(SIGN_SORTS, sorts) }))],
  drop: [],
  feed: [
    bait,
    baitNote,
    field("amountG", { is: "weight" }),
    field("times", { is: "count" }),
    field("how", { is: "choice", options: options(FEED_WAYS, ways) }),
    weightUnit,
  ],
  change: [
    field("rig", { is: "name", of: "rig" }),
    field("depthMm", { is: "depth" }),
    rare(field("depthByMm", { is: "depth-by" })),
    field("distanceMm", { is: "distance" }),
    rare(field("distanceByMm", { is: "distance-by" })),
    bait,
    baitNote,
    rare(field("hook", { is: "count" })),
    rare(field("lashMm", { is: "depth" })),
    rare(field("lashByMm", { is: "depth-by" })),
    lengthUnit,
  ],
  net: [field("number", { is: "count" })],
  conditions: [
    field("wind", { is: "text" }),
    field("sky", { is: "text" }),
    field("waterC", { is: "degrees" }),
    field("airC", { is: "degrees" }),
  ],
  note: [needed(field("text", { is: "text" }))],
  session: [needed(field("act", { is: "choice", options: options(SESSION_ACTS, acts) }))],
  remind: [needed(field("everyMs", { is: "minutes" })), field("about", { is: "text" })],
};

/** Said as a value or as a step, never as both. */
export const EITHER: Readonly<Record<string, string>> = {
  depthMm: "depthByMm",
  depthByMm: "depthMm",
  distanceMm: "distanceByMm",
  distanceByMm: "distanceMm",
  lashMm: "lashByMm",
  lashByMm: "lashMm",
};

/**
 * The fields in sight: those that were said, and of the others the usual ones. Of a value and a step
 * the one that was said is usual.
 */
export function usualFields(statement: EntryStatement): Field[] {
  const isSaid = (name: string | undefined) => name !== undefined && name in statement;
  return FIELDS[statement.kind].filter(
    ({ name, isRare }) => isSaid(name) || (!isRare && !isSaid(EITHER[name])),
  );
}

/** What a new entry of a kind starts as, with what it cannot do without. */
const STARTS: readonly EntryStatement[] = [
  { kind: "fish" },
  { kind: "loss", cause: "off" },
  { kind: "change" },
  { kind: "feed" },
  { kind: "sign", sort: "bite" },
  { kind: "drop" },
  { kind: "net" },
  { kind: "conditions" },
  { kind: "note", text: "" },
  { kind: "session", act: "pause" },
  { kind: "remind", everyMs: 180_000 },
];

export const NEW_ENTRIES = STARTS.map((statement) => ({ name: kinds[statement.kind], statement }));
