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
const MOST_STRANGE_WORDS = 4;

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
    "their we us our were weve " +
    "what when where why how which cos but will " +
    "wont cant dont didnt doesnt isnt wasnt never not no ever always usually sometimes once " +
    "was had been used remember yesterday today tomorrow week month year years ago morning evening night " +
    "saturday sunday monday tuesday wednesday thursday friday ive i my me im ill id " +
    "quid pence pounds money paid pay cost price bob mate dad mum lad lads son wife dog " +
    "like think reckon know see saw look looks looking watch heard said says say told tell ask asked " +
    "want wants need needs get give gave take took bring buy bought sell sold cooking tea dinner " +
    "than as every off from over up behind under whose that those these this it its thats"
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
  if (!strange || !statements.some(isMeasured) || doubts.length > 0) return talk;
  return { verdict: "check", statements: [...statements], doubts: ["words left over"] };
}

/** "a skimmer's just a small bream" names two and catches none. */
const isOnlyNames = (statements: readonly Statement[]): boolean =>
  statements.length > 1 &&
  statements.every((one) => one.kind === "fish" && Object.keys(one).length === 2 && one.species);

const talk: Judged = { verdict: "ignore", statements: [], doubts: [] };

const isStrange = (item: Item): boolean =>
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
    case "change":
      return statement.depthByMm !== undefined || statement.depthMm !== undefined;
    case "feed":
      return statement.bait !== undefined && statement.amountG !== undefined;
    default:
      return false;
  }
}
