/**
 * Measures what the sums are worth against simulated truth and prints it as tables, for
 * DEVELOPERS.md. Takes the number of simulated sessions (2,000) and the seed (1).
 */
import { cpus } from "node:os";
import { type AtLimit, delayOf, falseCalls, otherLimits } from "../simulation/alarms.ts";
import { bestCalls, falseFinds, fasterCalls, targetCalls } from "../simulation/chances.ts";
import { AS_ASSUMED, DAY_KINDS, type Simulated, simulatedDays } from "../simulation/days.ts";
import { tryLimits } from "../simulation/limits.ts";
import { addNets, noCalls } from "../simulation/nets.ts";
import { randomOf } from "../simulation/random.ts";
import { trySeasons } from "../simulation/seasons.ts";
import {
  calibrationTable,
  heldIn,
  namedIn,
  percent,
  type Row,
  table,
  toldAndCame,
} from "../simulation/table.ts";
import { type Call, calibration } from "../simulation/tally.ts";
import { tryTurns } from "../simulation/turns.ts";

const [count = 2000, seed = 1] = process.argv.slice(2).map(Number);

const print = (heading: string, ...parts: readonly string[]) =>
  console.log([`### ${heading}`, ...parts].join("\n\n"), "\n");

function printLimits(): void {
  const kinds = Object.entries(DAY_KINDS);
  const tries = kinds.map(([, kind]) => tryLimits(simulatedDays(kind, count, seed)));
  const [assumed = {}] = tries;
  const head = ["limits", "named", ...kinds.map(([name]) => name)];
  const rows = Object.keys(assumed).map(
    (name): Row => [name, namedIn(assumed[name]), ...tries.map((ofKind) => heldIn(ofKind[name]))],
  );
  print("In how many of 100 the 95 % limits hold the truth", table(head, rows));
}

function printTurns(): void {
  const turns = tryTurns(count, seed);
  const seasons = [0.2, 0.4, 0.8].map((placeSpread) => ({
    placeSpread,
    ...trySeasons({ ...AS_ASSUMED, placeSpread }, count, seed),
  }));
  print(
    "The same of a turn in the pace, and of rates over four sessions",
    table(
      ["limits", "all", "named"],
      [
        ["rates before and after a turn", heldIn(turns.rates), namedIn(turns.rates)],
        ["time of a turn", heldIn(turns.times), namedIn(turns.times)],
        ...seasons.map(
          ({ placeSpread, rates }): Row => [
            `rates over sessions, places ${Math.round(100 * placeSpread)} % apart`,
            heldIn(rates),
            namedIn(rates),
          ],
        ),
      ],
    ),
  );
  print(
    "Chances told of a turn, and over sessions",
    calibrationTable({
      "there was a turn": turns.turned,
      "it went down": turns.slower,
      "faster now than before": turns.faster,
      "best over sessions": seasons[1]?.best ?? [],
    }),
  );
}

function printChances(): void {
  const columns: Record<string, Call[]> = {
    "one depth beats another": [],
    "best of four depths": [],
    "target reached": [],
  };
  const random = randomOf(seed);
  for (const simulated of simulatedDays(AS_ASSUMED, count, seed)) {
    columns["one depth beats another"]?.push(...fasterCalls(simulated));
    columns["best of four depths"]?.push(...bestCalls(simulated));
    columns["target reached"]?.push(...targetCalls(simulated, random));
  }
  const alike = falseFinds(simulatedDays({ ...AS_ASSUMED, placeSpread: 0 }, count, seed));
  print(
    "Chances told in a session",
    calibrationTable(columns),
    `Depths that bite alike differ at 1 in 20 in ${percent(alike.rates)} of 100 sessions by their rates, in ${percent(alike.waits)} by the log-rank test.`,
  );
}

function netCalls(days: Iterable<Simulated>, known: boolean) {
  const random = randomOf(seed);
  const calls = noCalls();
  for (const simulated of days) addNets(calls, simulated, known, random);
  return calls;
}

function printNets(): void {
  const days = (anglerSpread: number) =>
    simulatedDays({ ...AS_ASSUMED, anglerSpread }, count, seed);
  const columns = {
    "angler unknown": netCalls(days(0.2), false),
    "three days weighed": netCalls(days(0.2), true),
    "unknown, within 10 %": netCalls(days(0.1), false),
    "unknown, within 30 %": netCalls(days(0.3), false),
  };
  const entries = Object.entries(columns);
  const of = (what: "over" | "next") =>
    calibrationTable(Object.fromEntries(entries.map(([name, calls]) => [name, calls[what]])));
  print(
    "Nets said to be over their limit",
    of("over"),
    "With one fish more:",
    of("next"),
    "All nets when their chance first passes 30 in 100:",
    table(Object.keys(columns), [
      entries.map(([, { first }]) => toldAndCame(calibration(first, 1)[0])),
    ]),
  );
}

const minutes = (value: number) => (Number.isFinite(value) ? value : "never");

function printAlarms(): void {
  const paces = [5, 10, 20, 40];
  const differing = {
    "as assumed": {},
    "90 s to land": { handlingMin: 1.5 },
    shoals: { spellSpread: 0.5 },
  };
  print(
    "Of 100 steady five-hour sessions, in how many it is called quiet / on",
    table(
      ["fish an hour", ...Object.keys(differing)],
      paces.map(
        (pace): Row => [
          pace,
          ...Object.values(differing).map((kind) => {
            const { quiet, on } = falseCalls(count, seed, pace, kind);
            return `${percent(quiet)} / ${percent(on)}`;
          }),
        ],
      ),
    ),
  );
  const turns = [0, 0.25, 0.5, 2, 4];
  print(
    "Minutes from a turn after two hours until it is called: half of the sessions / nine in ten (called in three hours, of 100)",
    table(
      ["fish an hour", ...turns.map((times) => (times === 0 ? "stops" : `× ${times}`))],
      paces.map(
        (pace): Row => [
          pace,
          ...turns.map((times) => {
            const { half, most, called } = delayOf(count, seed, pace, times);
            return `${minutes(half)} / ${minutes(most)} (${Math.round(100 * called)})`;
          }),
        ],
      ),
    ),
  );
}

function printOtherLimits(): void {
  const paces = [5, 10, 20, 40];
  const tried = {
    quiet: { limits: [5, 6, 7, 8, 9, 10, 12], turns: [0, 0.25] },
    on: { limits: [1.5, 2, 2.5, 3, 4], turns: [2, 4] },
  } as const;
  for (const mood of ["quiet", "on"] as const) {
    const { limits, turns } = tried[mood];
    const columns = paces.map((pace) => otherLimits(mood, limits, turns, count, seed, pace));
    const cell = (one: AtLimit | undefined) =>
      one ? `${percent(one.falseCalls)}; ${one.delays.map(minutes).join(" / ")}` : "";
    print(
      `Other limits of "${mood}", in mean gaps: false calls of 100 steady sessions; minutes until half of the turns to ${turns.join(" / ")} times the pace are called`,
      table(
        ["limit", ...paces.map((pace) => `${pace} fish an hour`)],
        limits.map((limit, row): Row => [limit, ...columns.map((column) => cell(column[row]))]),
      ),
    );
  }
}

console.log(
  `npm run simulate -- ${count} ${seed}; Node ${process.version}, ${cpus().length} × ${cpus()[0]?.model}, ${new Date().toISOString().slice(0, 10)}\n`,
);
const begun = performance.now();
for (const part of [
  printLimits,
  printTurns,
  printChances,
  printNets,
  printAlarms,
  printOtherLimits,
])
  part();
console.log(`${Math.round((performance.now() - begun) / 1000)} s`);
