/** The summary as plain text for a message. */
import { sayName } from "../../grammar/saying/fish.ts";
import type { Net, SetUp } from "../log/session.ts";
import {
  counted,
  formatDay,
  formatDistance,
  formatDuration,
  formatLength,
  formatWeight,
  type LengthStyle,
  type WeightStyle,
} from "../ui/format.ts";
import type { Summary, Tally, Tried } from "./summary.ts";

export interface Styles {
  weight: WeightStyle;
  length: LengthStyle;
}

const CAUSES = {
  off: "came off",
  pulled: "hook pulled",
  snapped: "snapped",
  foul: "foul hooked",
  net: "at the net",
} as const;

const SIGNS = { bite: "bite", missed: "missed bite", knock: "knock", liner: "liner" } as const;

/** A set-up on the way from one to another, put together part by part, was not tried. */
const TRIED_MS = 60_000;

/** @param withPlace the water and the peg are named only if the angler allows it */
export function summaryText(summary: Summary, styles: Styles, withPlace: boolean): string {
  const { place, nets, toCheck } = summary;
  const setUps = summary.setUps.filter(({ count, fishedMs }) => count > 0 || fishedMs >= TRIED_MS);
  const where = [place.water, place.peg && `peg ${place.peg}`].filter(Boolean).join(", ");
  return [
    ...(withPlace && where ? [where] : []),
    when(summary),
    caught(summary, styles),
    ...scales(nets, styles),
    ...bySpecies(summary, styles),
    ...best(summary, styles),
    ...line(
      "Lost",
      summary.losses.map(({ value, count }) => `${count} ${CAUSES[value]}`),
    ),
    ...line(
      "Signs",
      summary.signs.map(({ value, count }) => counted(count, SIGNS[value])),
    ),
    ...(setUps.length > 0 ? ["", "Set-ups:"] : []),
    ...setUps.map((one) => `- ${tried(one, styles)}`),
    ...(nets.length > 1 ? ["", "Nets:", ...nets.map((one) => `- ${net(one, styles)}`)] : []),
    ...(toCheck > 0 ? ["", `${counted(toCheck, "entry", "entries")} still to be checked.`] : []),
  ].join("\n");
}

function when({ place, startedAt, fishedMs }: Summary): string {
  const method = place.method ? `${place.method}, ` : "";
  if (startedAt === undefined) return "Not started yet";
  return `${formatDay(startedAt)}, ${method}${formatDuration(fishedMs)} fished`;
}

const caught = (tally: Tally, styles: Styles): string => `${weightOf(tally, styles)} (as spoken)`;

/** "12 lb 4 oz from 7 fish, 2 of them without a weight". */
function weightOf({ count, spokenG, unweighed }: Tally, { weight }: Styles): string {
  if (count === 0) return "No fish";
  if (unweighed === count) return `${count} fish, no weights`;
  const missing = unweighed > 0 ? `, ${unweighed} of them without a weight` : "";
  return `${formatWeight(spokenG, weight)} from ${count} fish${missing}`;
}

/** What the scales said, where they said it of every net with fish in it. */
function scales(nets: readonly Net[], { weight }: Styles): string[] {
  const used = nets.filter(({ count, weighedG }) => count > 0 || weighedG !== undefined);
  if (used.length === 0 || used.some(({ weighedG }) => weighedG === undefined)) return [];
  const total = used.reduce((sum, { weighedG = 0 }) => sum + weighedG, 0);
  return [`Scales: ${formatWeight(total, weight)}`];
}

function bySpecies({ species }: Summary, styles: Styles): string[] {
  const parts = species.map(({ species: name, count, spokenG }) => {
    const called = name === undefined ? "not named" : sayName(name);
    const weight = spokenG > 0 ? ` (${formatWeight(spokenG, styles.weight)})` : "";
    return `${count} ${called}${weight}`;
  });
  return line("Fish", parts);
}

function best({ best }: Summary, { weight, length }: Styles): string[] {
  if (!best) return [];
  const parts = [
    best.species === undefined ? undefined : sayName(best.species),
    best.weightG === undefined ? undefined : formatWeight(best.weightG, weight, "quarter"),
    best.lengthMm === undefined ? undefined : formatLength(best.lengthMm, length),
  ];
  return [`Best: ${parts.filter(Boolean).join(", ")}`];
}

const line = (title: string, parts: readonly string[]): string[] =>
  parts.length > 0 ? [`${title}: ${parts.join(", ")}`] : [];

function tried({ setUp, fishedMs, ...tally }: Tried, styles: Styles): string {
  return `${setUpText(setUp, styles)}: ${weightOf(tally, styles)} in ${formatDuration(fishedMs)}`;
}

/** "rig 2, 60 cm deep, 11 m out, hook 16, red worm", or that nothing was said of it. */
export function setUpText(
  { rig, depthMm, distanceMm, hook, bait, baitNote, lashMm }: SetUp,
  { length }: Pick<Styles, "length">,
): string {
  const parts = [
    rig !== undefined && (/^\d+$/.test(rig) ? `rig ${rig}` : rig),
    depthMm !== undefined && `${formatLength(depthMm, length)} deep`,
    distanceMm !== undefined && `${formatDistance(distanceMm)} out`,
    hook !== undefined && `hook ${hook}`,
    bait !== undefined && (baitNote === undefined ? bait : `${baitNote} ${bait}`),
    lashMm !== undefined && `${formatLength(lashMm, length)} above the float`,
  ].filter(Boolean);
  return parts.length > 0 ? parts.join(", ") : "set-up not named";
}

function net({ number, count, spokenG, unweighed, weighedG }: Net, styles: Styles): string {
  const scales = weighedG === undefined ? "" : `; scales ${formatWeight(weighedG, styles.weight)}`;
  return `${number}: ${weightOf({ count, spokenG, unweighed }, styles)}${scales}`;
}
