/** What is said on a long day: phrases with a number each that is said only once, talk, silences. */
import type { FakeClock } from "../../speech/fake-clock.ts";

const WORD_MS = 350;
const FIRST_NUMBER = 1001;

/** @param hear takes each word as it is spoken, and whether it ends what is said */
export function talk(
  clock: FakeClock,
  random: () => number,
  hear: (word: string, isLast: boolean) => void,
): { said: number } {
  const account = { said: 0 };
  const speak = () => {
    const words = phrase(FIRST_NUMBER + account.said, random());
    account.said += 1;
    words.forEach((word, place) => {
      clock.setTimeout(() => hear(word, place === words.length - 1), place * WORD_MS);
    });
    const pause = random() < 0.02 ? 600_000 * random() : 300 + 28_000 * random();
    clock.setTimeout(speak, words.length * WORD_MS + pause);
  };
  clock.setTimeout(speak, 2_000);
  return account;
}

function phrase(number: number, draw: number): string[] {
  if (draw < 0.5) return ["carp", `${number}`, "grams"];
  if (draw < 0.7) return ["depth", `${number}`, "millimetres"];
  if (draw < 0.85) return ["note", "the", "peg", "of", `${number}`];
  return ["he", "was", "born", "in", `${number}`];
}

/** The number that stands in what was heard. */
export const numberIn = (text: string): string | undefined => /\d{4,}/.exec(text)?.[0];
