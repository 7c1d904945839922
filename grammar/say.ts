/** Statements in English. Reading what is said gives the same statement back. */
import { changeParts } from "./saying/change.ts";
import { fishParts, sayName, sayOne } from "./saying/fish.ts";
import { sayDuration, sayNumber, sayTemperature, sayWeight } from "./saying/quantities.ts";
import type { Amendable, Question, Statement, StatementOf } from "./statement.ts";

export function say(statement: Statement): string {
  switch (statement.kind) {
    case "fish":
      return sayFish(statement);
    case "loss":
      return sayLoss(statement);
    case "sign":
      return SIGNS[statement.sort];
    case "drop":
      return "rig's in";
    case "feed":
      return sayFeed(statement);
    case "change":
      return changeParts(statement).join(", ") || "set-up changed";
    case "net":
      return statement.number === undefined ? "new net" : `net ${statement.number}`;
    case "conditions":
      return sayConditions(statement);
    case "note":
      return `note, ${statement.text}`;
    case "amend":
      return sayAmend(statement);
    case "withdraw":
      return statement.of === "last" ? "scratch that" : `take out fish ${statement.of}`;
    case "ask":
      return QUESTIONS_SAID[statement.what];
    case "session":
      return ACTS[statement.act];
    case "talkback":
      return statement.level === "tones" ? "tones only" : `${statement.level} answers`;
    case "remind":
      return sayRemind(statement);
  }
}

const SIGNS = { bite: "bite", missed: "missed one", knock: "knock", liner: "liner" } as const;

const ACTS = {
  start: "start the session",
  pause: "taking a break",
  resume: "back fishing",
  stop: "all out",
} as const;

const QUESTIONS_SAID: Readonly<Record<Question, string>> = {
  total: "what have I got",
  count: "how many fish have I got",
  lost: "how many have I lost",
  bites: "how many bites have I had",
  biggest: "what's my biggest fish",
  fed: "what have I fed",
  "last-fish": "how long since the last one",
  rate: "what's my rate",
  "best-depth": "which depth is best",
  "best-rig": "which rig is best",
  "best-bait": "which bait is best",
  "best-distance": "which distance is best",
  "best-hook": "which hook is best",
  "best-hour": "which hour is best",
  start: "where should I start",
  "bite-depth": "how deep are they biting",
  "bite-time": "how long do bites take",
  mood: "has it gone quiet",
  sure: "how sure are you",
  again: "repeat that",
  net: "how's the net",
  pace: "what's my pace",
  "time-left": "how long left",
  "set-up": "what's my set-up",
};

function sayFish(fish: StatementOf<"fish">): string {
  const named = fish.species !== undefined || fish.count !== undefined;
  return [...(named ? [] : ["fish"]), ...fishParts(fish)].join(", ");
}

function sayLoss({ cause, species }: StatementOf<"loss">): string {
  const name = species && sayOne(species);
  switch (cause) {
    case "off":
      return `lost ${name ?? "one"}`;
    case "pulled":
      return name ? `lost ${name}, hook pulled` : "hook pulled";
    case "snapped":
      return name ? `${name} snapped me` : "snapped me";
    case "foul":
      return `lost a foul hooked ${species ? sayName(species) : "one"}`;
    case "net":
      return `lost ${name ?? "one"} at the net`;
  }
}

const FED = { pot: "potted in", catapult: "catapulted", hand: "threw in" } as const;

function sayFeed({ times, amountG, bait, baitNote, how, unit }: StatementOf<"feed">): string {
  const amount = amountG === undefined ? undefined : sayWeight(amountG, unit?.weight);
  const name = bait && (baitNote ? `${baitNote} ${bait}` : bait);
  const what = [amount, name].filter((part) => part !== undefined).join(" of ");
  const verb = how === undefined ? "fed" : how === "hand" && !what ? "fed by hand" : FED[how];
  const often = times === 2 ? "twice" : times && `${sayNumber(times)} times`;
  return [verb, what, often].filter(Boolean).join(" ");
}

function sayConditions({ wind, sky, waterC, airC }: StatementOf<"conditions">): string {
  return [
    wind && `wind ${wind}`,
    sky,
    waterC !== undefined && `water ${sayTemperature(waterC)}`,
    airC !== undefined && `air ${sayTemperature(airC)}`,
  ]
    .filter(Boolean)
    .join(", ");
}

function sayAmend({ of, set }: StatementOf<"amend">): string {
  return `${of === "last" ? "make that" : `fish ${of} was`} ${sayValues(set)}`;
}

/** The new values; a cause stands for a loss and a number for a net. */
function sayValues(set: Amendable): string {
  if (set.cause) return sayLoss({ kind: "loss", cause: set.cause, ...pick(set.species) });
  if (set.number !== undefined) return `net ${set.number}`;
  const about = set.approx && set.weightG === undefined && set.lengthMm === undefined;
  const isKindOnly = set.species !== undefined && Object.keys(set).length === 1;
  if (isKindOnly) return sayOne(set.species as string);
  const parts = [...fishParts(set), ...changeParts(set)];
  return about ? ["about", ...parts].join(" ") : parts.join(", ");
}

const pick = (species: string | undefined) => (species === undefined ? {} : { species });

function sayRemind({ everyMs, about }: StatementOf<"remind">): string {
  if (everyMs === 0) return "stop nudging";
  return about
    ? `remind me to ${about} every ${sayDuration(everyMs)}`
    : `nudge me every ${sayDuration(everyMs)}`;
}
