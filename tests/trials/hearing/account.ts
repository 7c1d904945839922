/** What is wrong with the log of a long day, each thing in a sentence. */
import { LONGEST_WAIT_MS } from "../../../src/speech/back-off.ts";
import { END_LIMIT_MS, QUIET_LIMIT_MS } from "../../../src/speech/web-run.ts";
import type { SoakReport } from "./soak.ts";
import { numberIn } from "./talk.ts";

/** What the angler can only mend himself: he must be told of it. */
const TOLD = ["not-allowed", "no-microphone"] as const;
/** A run that has gone deaf unnoticed, its end not reported, then the longest wait. */
const MOST_DEAF_MS = QUIET_LIMIT_MS + END_LIMIT_MS + LONGEST_WAIT_MS;
/** Held after the last hour, to what was after the first. */
const MOST_GROWN = 1.2;

export function faultsIn(report: SoakReport): string[] {
  const { reported, events, bytes, deafMs, mishaps, told, stateAtEnd, timersLeft } = report;
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
    deafMs > MOST_DEAF_MS && `deaf for ${Math.round(deafMs / 1000)} s with nothing in the way`,
    growth > MOST_GROWN && `held ${growth.toFixed(2)} times what it did after an hour`,
    ...[...mishaps].map(([name, times]) => times === 0 && `never tried: ${name}`),
    ...TOLD.map((reason) => !told.includes(reason) && `never told: ${reason}`),
    !HEARS.has(stateAtEnd.is) && `${stateAtEnd.is} at the end`,
    timersLeft > 0 && `${timersLeft} timers left`,
  ].filter((fault) => fault !== false);
}

/** Or is about to again. */
const HEARS: ReadonlySet<string> = new Set(["starting", "listening", "held", "waiting"]);
