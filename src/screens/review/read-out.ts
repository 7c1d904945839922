import { useEffect, useRef } from "preact/hooks";
import { numbersOf } from "../../log/alterations.ts";
import type { Entry } from "../../log/session.ts";
import { formatClock } from "../../ui/format.ts";
import { reviewWords } from "../../words/review.ts";
import type { App, Settings } from "../app.ts";
import { sayShown } from "./words.ts";

const { asked: words, entries } = reviewWords;

/**
 * Reads each question out as it comes up, after what became of the one before: a new sentence takes
 * the place of one that is still being said.
 */
export function useReadOut(app: App, isAloud: boolean, entry: Entry | undefined): void {
  const before = useRef<string>(undefined);
  useEffect(() => {
    const answered = before.current;
    before.current = isAloud ? entry?.id : undefined;
    if (!isAloud || (answered !== undefined && answered === entry?.id)) return;
    app.putRight.readOut(toSay(app, entry, answered));
  }, [app, isAloud, entry?.id]);
}

function toSay(app: App, entry: Entry | undefined, answered: string | undefined): string {
  const settings = app.settings.value;
  const question = entry && words.question(named(entry, settings), formatClock(entry.at));
  if (answered === undefined) return question ?? words.allDone;
  const done = app.session.value.entries.find(({ id }) => id === answered);
  const became = done ? sayShown(done.statement, settings) : words.takenOut;
  return question === undefined ? words.done(became) : words.after(became, question);
}

/** "Fish 7, skimmer, 10 ounces". */
function named(entry: Entry, settings: Settings): string {
  const said = sayShown(entry.statement, settings);
  const numbers = numbersOf(entry);
  const [first, last] = [numbers[0], numbers.at(-1)];
  if (first === undefined || last === undefined) return said;
  return words.fish(entries.numbers(first, last), said.charAt(0).toLowerCase() + said.slice(1));
}
