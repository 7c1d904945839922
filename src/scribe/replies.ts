/** What is answered to an utterance, in tones and words. */
import { sayRounded } from "../../grammar/saying/rounded.ts";
import type { Statement } from "../../grammar/statement.ts";
import type { Verdict } from "../log/event.ts";
import type { Kept } from "../log/keeper.ts";
import type { Session } from "../log/session.ts";
import type { Answer } from "../speech/talkback.ts";
import { replyWords as words } from "../words/replies.ts";
import { answer } from "./answers/answer.ts";
import type { Asking } from "./answers/asking.ts";
import { total } from "./answers/standing.ts";
import { sentence } from "./answers/words.ts";
import { isForAnswerOnly, type Writing } from "./writing.ts";

export interface Written {
  statements: readonly Statement[];
  verdict: Verdict;
  doubts: readonly string[];
  missed: Writing["missed"];
  /** Absent where there was nothing to write. */
  kept: Kept | undefined;
  /** The advice of the store, where it did not take this. */
  trouble: string | undefined;
  /** The session as it was, and what is asked of it now. */
  before: Session;
  asking: Asking;
}

/** Undefined where there is nothing to answer: talk that is not for the log is met with silence. */
export function replyTo(written: Written): Answer | undefined {
  const { kept, missed, statements, asking } = written;
  const parts = [
    ...statedWords(written),
    ...missed.map((one) => same(nothingTo(one))),
    ...statements.flatMap((one) => (one.kind === "ask" ? [answer(one.what, asking)] : [])),
    ...statements.flatMap((one) =>
      one.kind === "talkback" ? [same(`${sentence(sayRounded(one))}.`)] : [],
    ),
  ];
  const isStored = kept === undefined || kept.isStored;
  if (!isStored) parts.push(same(words.notStored(written.trouble ?? "")));
  if (parts.length === 0) return undefined;
  const outcome = outcomeOf(written);
  return {
    ...(outcome && { outcome }),
    short: parts.map(({ short }) => short).join(" "),
    full: parts.map(({ full }) => full).join(" "),
    ...((missed.length > 0 || statements.some(isForAnswerOnly)) && { asked: true }),
  };
}

const same = (text: string) => ({ short: text, full: text });

function outcomeOf({ kept, missed, statements, verdict }: Written): Answer["outcome"] {
  if (kept && !kept.isStored) return "warning";
  if (missed.length > 0) return "not-understood";
  const logged = kept?.events.some(({ body }) => body.kind !== "heard");
  if (!kept || !logged) return undefined;
  if (verdict === "check") return "check";
  return statements.every(({ kind }) => kind === "withdraw") ? "taken-back" : "logged";
}

/**
 * What was logged, as it now stands: a correction is said back as the entry it made. Of an entry that
 * it split, the parts that it did not correct are not told of.
 */
function statedWords({ kept, verdict, doubts, before, asking }: Written) {
  const { session } = asking;
  const lines = (kept?.events ?? []).flatMap(({ body }) => {
    if (body.kind === "entry" && body.beside === undefined)
      return [`${sentence(sayRounded(body.statement))}.`];
    if (body.kind === "amend" && body.at === undefined)
      return [words.now(nowSaid(session, body.target))];
    if (body.kind === "withdraw") return [takenBack(before, session, body.targets)];
    return [];
  });
  if (lines.length === 0) return [];
  const short = lines.join(" ");
  const caught = kept?.events.some(
    ({ body }) => body.kind === "entry" && body.statement.kind === "fish",
  );
  const check = verdict === "check" ? [words.toCheckWhy(doubts.join(", ") || words.faintly)] : [];
  return [
    {
      short: [short, ...(check.length > 0 ? [words.toCheck] : [])].join(" "),
      full: [short, ...(caught ? [total(asking).full] : []), ...check].join(" "),
    },
  ];
}

function takenBack(before: Session, after: Session, targets: readonly string[]): string {
  const corrected = before.corrections
    .flatMap(({ id, body }) => (targets.includes(id) && body.kind === "amend" ? [body.target] : []))
    .find((target) => after.entries.some(({ id }) => id === target));
  if (corrected !== undefined) return words.backTo(nowSaid(after, corrected));
  const gone = after.withdrawn.filter(({ id }) => targets.includes(id));
  if (gone.length === 0) return words.takenBack;
  return words.takenBackWhat(gone.map((one) => sayRounded(one.statement)).join(", "));
}

const nowSaid = ({ entries }: Session, target: string): string => {
  const entry = entries.findLast(({ id }) => id === target);
  return entry ? sayRounded(entry.statement) : words.nothing;
};

function nothingTo({ kind, of }: Writing["missed"][number]): string {
  if (of !== "last") return words.noSuchFish(of);
  return kind === "amend" ? words.nothingToCorrect : words.nothingToTakeBack;
}
