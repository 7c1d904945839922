import { type Bias, biasFactor } from "../../analysis/weights/bias.ts";
import { loadsOf } from "../../analysis/weights/loads.ts";
import type { Session } from "../../log/session.ts";
import { Pairs } from "../../ui/charts/pairs.tsx";
import { formatWeight } from "../../ui/format.ts";
import { chartWords } from "../../words/charts.ts";
import type { Styles } from "../summary-text.ts";
import { weightTicks } from "./ticks.ts";

const words = chartWords.scales;

export interface Weighed {
  net: number;
  /** Grams: as spoken and filled in, and by the scales. */
  spokenG: number;
  weighedG: number;
}

/** The nets that were both spoken of and weighed. */
export const weighedOf = (session: Session): Weighed[] =>
  loadsOf(session).flatMap(({ net, spokenG, weighedG }) =>
    weighedG === undefined || spokenG === 0 ? [] : [{ net, spokenG, weighedG }],
  );

/** Spoken against weighed, net by net. */
export function ScalesPicture({ of, styles }: { of: readonly Weighed[]; styles: Styles }) {
  const write = (grams: number) => formatWeight(grams, styles.weight);
  const top = Math.max(...of.flatMap(({ spokenG, weighedG }) => [spokenG, weighedG]));
  return (
    <Pairs
      pairs={of.map(({ net, spokenG, weighedG }) => ({
        name: words.net(net),
        beside: words.beside(write(spokenG), write(weighedG)),
        open: spokenG,
        full: weighedG,
      }))}
      openName={words.spoken}
      fullName={words.scales}
      ticks={weightTicks(top, styles.weight)}
      title={words.title(of.length)}
    />
  );
}

/** Less than this is nothing that anybody would mend. */
const ALIKE = 0.02;

/** What the weighed nets, this session's and earlier ones', say of the angler's judgement. */
export function judgementSentence(bias: Bias): string {
  if (bias.nets === 0) return words.none;
  const factor = biasFactor(bias);
  const [lower, upper] = [offBy(factor.lower), offBy(factor.upper)];
  if (!factor.tells) return words.tooFew(lower, upper, bias.nets);
  const off = factor.value - 1;
  const percent = percentOf(factor.value);
  const head =
    Math.abs(off) < ALIKE ? words.even : off > 0 ? words.low(percent) : words.high(percent);
  return `${head}: ${words.limits(lower, upper, bias.nets)}.`;
}

/** How far what is spoken lies from the scales, as a share of the scales. @param factor scales / spoken */
const percentOf = (factor: number): number => Math.round(100 * Math.abs(1 / factor - 1));

function offBy(factor: number): string {
  const percent = percentOf(factor);
  if (percent === 0) return words.exact;
  return factor > 1 ? words.lowBy(percent) : words.highBy(percent);
}
