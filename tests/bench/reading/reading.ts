/** Reading a phrase: how well, how fast, and beside general-purpose readers of quantities. */
import { createReader, type Reader } from "../../../grammar/read.ts";
import { type Figures, type Measured, type Options, rounded, type Table } from "../part.ts";
import { spread, type Timed, timeOf } from "../times.ts";
import { held, underNoise } from "./accuracy.ts";
import { besidePeers, workShare } from "./beside-peers.ts";
import { inChromium } from "./in-chromium.ts";
import { made, type Said, sampledPhrases, tables } from "./lines.ts";
import { AS_STATED, type Noise, QUIET } from "./noise.ts";

export const title = "Reading a phrase";

const SAMPLED = 2000;
/** Of them, so many are read on a slow processor too. */
const SLOWLY = 600;
/** What the budgets hold is drawn by itself, alike whatever seed the bench is given. */
const HELD = 500;
const HELD_SEED = 1;

const milliseconds = ({ median: half, p95, p99 }: Timed) =>
  [half, p95, p99].map((ms) => rounded(ms, 3));

function times(reader: Reader, phrases: readonly Said[], firstMs: number, seed: number): Table {
  const of = (noise: Noise) =>
    milliseconds(
      spread(made(phrases, noise, seed).map(({ line }) => timeOf(() => reader.read([line])))),
    );
  const talk = tables(reader).talk ?? [];
  return {
    caption: `Milliseconds a line, one read each; a reader made and its first phrase read, in a warm process: ${rounded(firstMs, 0)} ms.`,
    head: ["lines", "median", "p95", "p99"],
    rows: [
      ["as drawn", ...of(QUIET)],
      ["all noise as stated", ...of(AS_STATED)],
      ["talk", ...milliseconds(spread(talk.map(({ line }) => timeOf(() => reader.read([line])))))],
    ],
  };
}

/** Alike on any machine, but for the last, which is a share of processor times. */
export async function figures(): Promise<Figures> {
  const reader = createReader();
  const phrases = sampledPhrases(reader, HELD, HELD_SEED);
  return {
    ...held(reader).figures,
    ...underNoise(reader, phrases, HELD_SEED).figures,
    ...besidePeers(HELD_SEED, 1).figures,
    "work for a whole phrase, of recognizers-text's for the quantity": await workShare(HELD_SEED),
  };
}

export async function measure({ seed }: Options): Promise<Measured> {
  const firstMs = timeOf(() => createReader().read(["carp two pounds eight"]));
  const reader = createReader();
  const phrases = sampledPhrases(reader, SAMPLED, seed);
  const slow = phrases.slice(0, SLOWLY);
  const lines = (noise: Noise) => made(slow, noise, seed).map(({ line }) => line);
  const slowly = await inChromium({
    "nothing, for the timer alone": Array.from({ length: SLOWLY }, () => ""),
    "as drawn": lines(QUIET),
    "all noise as stated": lines(AS_STATED),
    talk: (tables(reader).talk ?? []).slice(0, SLOWLY).map(({ line }) => line),
  });
  return {
    tables: [
      times(reader, phrases, firstMs, seed),
      slowly,
      held(reader).table,
      underNoise(reader, phrases, seed).table,
      besidePeers(seed).table,
    ],
    figures: await figures(),
  };
}
