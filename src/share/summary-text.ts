/** The summary in words: one telling for a message, a picture, a link and paper. */
import { sayName } from "../../grammar/saying/fish.ts";
import type { Net, SetUp } from "../log/session.ts";
import {
  counted,
  formatClock,
  formatDistance,
  formatDuration,
  formatLength,
  formatWeight,
  type LengthStyle,
  type WeightStyle,
} from "../ui/format.ts";
import { formatDay } from "../ui/format-day.ts";
import { summaryTextWords as words } from "../words/summary-text.ts";
import { type Allowed, NOTHING_ALLOWED } from "./allowed.ts";
import { allowedOf, type Summary, type Tally, type Tried } from "./summary.ts";

export interface Styles {
  weight: WeightStyle;
  length: LengthStyle;
}

/** Lines that belong together; those of the first part stand without a title. */
export interface Part {
  title?: string;
  lines: string[];
}

/** A set-up on the way from one to another, put together part by part, was not tried. */
const TRIED_MS = 60_000;

/** The summary as plain text for a message. */
export function summaryText(
  summary: Summary,
  styles: Styles,
  allowed: Allowed = NOTHING_ALLOWED,
): string {
  return summaryParts(summary, styles, allowed)
    .map(({ title, lines }) =>
      [...(title ? [`${title}:`] : []), ...lines.map((one) => (title ? `- ${one}` : one))].join(
        "\n",
      ),
    )
    .join("\n\n");
}

/** Only parts that have something to say. */
export function summaryParts(summary: Summary, styles: Styles, allowed: Allowed): Part[] {
  const told = allowedOf(summary, allowed);
  const { nets, toCheck } = told;
  const { titles } = words;
  const parts: Part[] = [
    {
      lines: [
        ...headLines(told),
        words.asSpoken(caughtText(told, styles)),
        ...inShort(told, styles),
      ],
    },
    { title: titles.setUps, lines: setUpLines(told, styles) },
    { title: titles.nets, lines: nets.length > 1 ? nets.map((one) => net(one, styles)) : [] },
    { title: titles.notes, lines: told.notes.map(note) },
    { lines: toCheck > 0 ? [words.stillToCheck(entriesText(toCheck))] : [] },
  ];
  return parts.filter(({ lines }) => lines.length > 0);
}

const entriesText = (count: number): string => counted(count, words.entry, words.entries);

/** Where it was, as far as that may be told, and when. */
export function headLines(told: Summary): string[] {
  const { water, peg } = told.place;
  const where = [water, peg && words.peg(peg)].filter(Boolean).join(", ");
  return [...(where ? [where] : []), whenLine(told)];
}

function whenLine({ place: { method }, startedAt, fishedMs }: Summary): string {
  if (startedAt === undefined) return words.notStarted;
  const [day, duration] = [formatDay(startedAt), formatDuration(fishedMs)];
  return method ? words.fishedAs(day, method, duration) : words.fished(day, duration);
}

/** Each set-up that was tried, with what came of it. */
export const setUpLines = ({ setUps }: Summary, styles: Styles): string[] =>
  setUps
    .filter(({ count, fishedMs }) => count > 0 || fishedMs >= TRIED_MS)
    .map((one) => tried(one, styles));

/** How the catch was weighed, what it was, and what got away. */
export function inShort(summary: Summary, styles: Styles): string[] {
  const { losses, signs } = summary;
  const { titles } = words;
  return [
    ...scales(summary.nets, styles),
    ...bySpecies(summary, styles),
    ...best(summary, styles),
    ...line(
      titles.lost,
      losses.map(({ value, count }) => `${count} ${words.causes[value]}`),
    ),
    ...line(
      titles.signs,
      signs.map(({ value, count }) => counted(count, words.signs[value])),
    ),
  ];
}

/** "12 lb 4 oz from 7 fish, 2 of them without a weight". */
function caughtText({ count, spokenG, unweighed }: Tally, { weight }: Styles): string {
  if (count === 0) return words.noFish;
  if (unweighed === count) return words.noWeights(count);
  const missing = unweighed > 0 ? words.withoutWeight(unweighed) : "";
  return words.fromFish(formatWeight(spokenG, weight), count) + missing;
}

/** What the scales said, where they said it of every net with fish in it. */
function scales(nets: readonly Net[], { weight }: Styles): string[] {
  const used = nets.filter(({ count, weighedG }) => count > 0 || weighedG !== undefined);
  if (used.length === 0 || used.some(({ weighedG }) => weighedG === undefined)) return [];
  const total = used.reduce((sum, { weighedG = 0 }) => sum + weighedG, 0);
  return [words.scales(formatWeight(total, weight))];
}

const nameOf = (species: string | undefined): string =>
  species === undefined ? words.notNamed : sayName(species);

function bySpecies({ species }: Summary, styles: Styles): string[] {
  const parts = species.map(({ species: name, count, spokenG }) => {
    const weight = spokenG > 0 ? ` (${formatWeight(spokenG, styles.weight)})` : "";
    return `${count} ${nameOf(name)}${weight}`;
  });
  return line(words.titles.fish, parts);
}

function best({ best }: Summary, { weight, length }: Styles): string[] {
  if (!best) return [];
  const parts = [
    best.species === undefined ? undefined : sayName(best.species),
    best.weightG === undefined ? undefined : formatWeight(best.weightG, weight, "quarter"),
    best.lengthMm === undefined ? undefined : formatLength(best.lengthMm, length),
  ];
  return [`${words.titles.best}: ${parts.filter(Boolean).join(", ")}`];
}

const line = (title: string, parts: readonly string[]): string[] =>
  parts.length > 0 ? [`${title}: ${parts.join(", ")}`] : [];

const tried = ({ setUp, fishedMs, ...tally }: Tried, styles: Styles): string =>
  words.tried(setUpText(setUp, styles), caughtText(tally, styles), formatDuration(fishedMs));

/** "rig 2, 60 cm deep, 11 m out, hook 16, red worm", or that nothing was said of it. */
export function setUpText(
  { rig, depthMm, distanceMm, hook, bait, baitNote, lashMm }: SetUp,
  { length }: Pick<Styles, "length">,
): string {
  const { setUp } = words;
  const parts = [
    rig !== undefined && (/^\d+$/.test(rig) ? setUp.rig(rig) : rig),
    depthMm !== undefined && setUp.deep(formatLength(depthMm, length)),
    distanceMm !== undefined && setUp.out(formatDistance(distanceMm)),
    hook !== undefined && setUp.hook(hook),
    bait !== undefined && (baitNote === undefined ? bait : `${baitNote} ${bait}`),
    lashMm !== undefined && setUp.above(formatLength(lashMm, length)),
  ].filter(Boolean);
  return parts.length > 0 ? parts.join(", ") : setUp.notNamed;
}

function net({ number, count, spokenG, unweighed, weighedG }: Net, styles: Styles): string {
  const scales =
    weighedG === undefined ? "" : words.netScales(formatWeight(weighedG, styles.weight));
  return words.net(number, caughtText({ count, spokenG, unweighed }, styles) + scales);
}

const note = ({ at, text }: Summary["notes"][number]): string =>
  at === undefined ? text : `${formatClock(at)} ${text}`;
