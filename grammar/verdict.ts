/** Whether a reading is logged, logged and put up for a look, or taken for talk. */
import type { Item } from "./match/items.ts";
import type { Statement } from "./statement.ts";

export type Verdict = "log" | "check" | "ignore";

export interface Judged {
  verdict: Verdict;
  statements: Statement[];
  doubts: string[];
}

/** As many strange words as a sure statement may carry and still be put up for a look. */
export const MOST_STRANGE_WORDS = 5;

/** Words for other people, and for what is not so. */
const OTHERS: ReadonlySet<string> = new Set(
  (
    "he him his hes hed she her shes they them theyre theyve theyd their you your youre youve youd " +
    "yours who whos whose if would could should might because although though mate lad lads"
  ).split(" "),
);

/** Words of talk: of other days, of money, of questions and of wishes. */
const TALK: ReadonlySet<string> = new Set(
  (
    "we us our were weve what when where why how which will wont cant dont didnt doesnt isnt wasnt " +
    "never not no always usually sometimes had been used remember yesterday tomorrow last week month " +
    "year years ago summer winter season morning evening night saturday sunday monday tuesday " +
    "wednesday thursday friday quid pence money paid pay cost price worth bob dad mum son wife dog " +
    "think reckon know knew see saw seen look looks looking watch heard said says say told tell ask " +
    "asked want wants wanted need needs buy bought sell sold cooking dinner record best average most " +
    "than once ever dreamt usually there theres stocked pond lake shop people bloke fella everyone somebody anybody"
  ).split(" "),
);

export function judge(
  statements: readonly Statement[],
  doubts: readonly string[],
  over: readonly Item[],
): Judged {
  if (statements.length === 0) return talk;
  if (over.length === 0) {
    const all = isOnlyNames(statements) ? [...doubts, "two kinds and no size"] : [...doubts];
    return { verdict: all.length > 0 ? "check" : "log", statements: [...statements], doubts: all };
  }
  const strange = over.length <= MOST_STRANGE_WORDS && over.every(isStrange);
  if (!strange || !statements.some(isMeasured)) return talk;
  return { verdict: "check", statements: [...statements], doubts: ["words left over"] };
}

/** "a skimmer's just a small bream" names two and catches none. */
const isOnlyNames = (statements: readonly Statement[]): boolean =>
  statements.length > 1 &&
  statements.every((one) => one.kind === "fish" && Object.keys(one).length === 2 && one.species);

const talk: Judged = { verdict: "ignore", statements: [], doubts: [] };

/** Whether a word may stand beside a sure statement without making it talk. */
export const isStrange = (item: Item): boolean =>
  "word" in item && !TALK.has(item.word) && !isOfOthers(item.word);

/** Whether a word speaks of, or to, somebody else. */
export const isOfOthers = (word: string): boolean => OTHERS.has(word);

/** Says so much that a few strange words beside it do not make it talk. */
function isMeasured(statement: Statement): boolean {
  switch (statement.kind) {
    case "fish":
      return (
        statement.species !== undefined &&
        (statement.weightG !== undefined || statement.lengthMm !== undefined)
      );
    case "feed":
      return statement.bait !== undefined && statement.amountG !== undefined;
    default:
      return false;
  }
}
