/** What is wrong with the log of a long day, each thing in a sentence. */
import type { SoakReport } from "./soak.ts";
import { numberIn } from "./talk.ts";

/** What the angler can only mend himself: he must be told of it. */
const TOLD = ["not-allowed", "no-microphone"] as const;
/** Held after the last hour, to what was after the first. */
const MOST_GROWN = 1.2;

export function faultsIn(report: SoakReport): string[] {
  const { reported, events, bytes, mishaps, told, stateAtEnd, timersLeft } = report;
  const numbers = events.flatMap(({ heard }) => numberIn(heard?.text ?? "") ?? []);
  const logged = new Set(numbers);
  const lost = [...reported].filter((word) => numberIn(word) && !logged.has(word));
  const twice = numbers.filter((number, place) => numbers.indexOf(number) !== place);
  const misread = events.filter(({ body, heard }) => {
    const said = /^carp (\d+) grams$/.exec(heard?.text ?? "")?.[1];
    if (said === undefined) return false;
    return !(
      body.kind === "entry" &&
      body.statement.kind === "fish" &&
      body.statement.weightG === Number(said)
    );
  });
  const back = events.filter(({ at }, place) => at < (events[place - 1]?.at ?? 0));
  const growth = (bytes.at(-1) ?? 0) / (bytes[0] ?? 1);
  return [
    lost.length > 0 && `heard and not in the log: ${lost}`,
    twice.length > 0 && `in the log twice: ${twice}`,
    misread.length > 0 && `another weight than was said: ${misread.map(({ id }) => id)}`,
    back.length > 0 && `${back.length} times the log's time ran backwards`,
    growth > MOST_GROWN && `held ${growth.toFixed(2)} times what it did after an hour`,
    ...[...mishaps].map(([name, times]) => times === 0 && `never tried: ${name}`),
    ...TOLD.map((reason) => !told.includes(reason) && `never told: ${reason}`),
    !HEARS.has(stateAtEnd.is) && `${stateAtEnd.is} at the end`,
    timersLeft > 0 && `${timersLeft} timers left`,
  ].filter((fault) => fault !== false);
}

/** Or is about to again. */
const HEARS: ReadonlySet<string> = new Set(["starting", "listening", "held", "waiting"]);
