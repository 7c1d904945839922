/** Quantities as we read them in a phrase, and as others read them alone. */
import { seededRandom } from "../../../grammar/jsgf/sample.ts";
import { type Figures, ofHundred, rounded, type Table } from "../part.ts";
import { interleaved, median, workOf } from "../times.ts";
import { isRight, makePeers, PEERS } from "./peers.ts";
import { FORMS } from "./quantities.ts";

/** Of each form of a quantity, so many are drawn. */
const OF_A_FORM = 20;
const ROUNDS = 5;

/** Accuracy and time of each peer on each form of a quantity. */
export function besidePeers(seed: number, rounds = ROUNDS) {
  const peers = makePeers();
  const random = seededRandom(seed);
  const rows = FORMS.map((form) => {
    const drawn = Array.from({ length: OF_A_FORM }, () => form.draw(random));
    const right = PEERS.map(
      (name) => drawn.filter(({ text, value }) => isRight(peers[name](text, form), value)).length,
    );
    const runs = Object.fromEntries(
      PEERS.map((name) => [name, (text: string) => peers[name](text, form)]),
    ) as Record<(typeof PEERS)[number], (text: string) => unknown>;
    const taken = interleaved(
      runs,
      drawn.map(({ text }) => text),
      rounds,
    );
    return { form, right, ms: PEERS.map((name) => median(taken[name])) };
  });
  const worse = rows.filter(({ right: [own = 0, ...others] }) =>
    others.some((other) => other > own),
  );
  const table: Table = {
    caption: `Quantities by form, ${OF_A_FORM} of each: right of 100, and median milliseconds. pegscribe reads a whole phrase ("carp …", "depth …"), the others the quantity alone; those find parts, which are added up for them, and compromise is told the units.`,
    head: ["form", ...PEERS, ...PEERS.map((name) => `${name}, ms`)],
    rows: rows.map(({ form, right, ms }) => [
      form.name,
      ...right.map((count) => ofHundred(count, OF_A_FORM)),
      ...ms.map((one) => rounded(one, 3)),
    ]),
  };
  const figures: Figures = {
    "quantities by form: right, of 100":
      (100 * rows.reduce((sum, { right }) => sum + (right[0] ?? 0), 0)) /
      (OF_A_FORM * FORMS.length),
    "forms that another reader reads better": worse.length,
  };
  return { table, figures };
}

/** Our work for a phrase beside that of recognizers-text for the quantity in it, over all forms. */
export async function workShare(seed: number): Promise<number> {
  const peers = makePeers();
  const random = seededRandom(seed);
  const drawn = FORMS.flatMap((form) =>
    Array.from({ length: OF_A_FORM }, () => ({ form, text: form.draw(random).text })),
  );
  const readAll = (name: (typeof PEERS)[number]) => () => {
    for (const { form, text } of drawn) peers[name](text, form);
  };
  const work = { pegscribe: 0, "recognizers-text": 0 };
  // The first round only makes both quick.
  for (let round = 0; round <= ROUNDS; round += 1)
    for (const name of ["pegscribe", "recognizers-text"] as const) {
      const ms = await workOf(readAll(name));
      if (round > 0) work[name] += ms;
    }
  return work.pegscribe / work["recognizers-text"];
}
