import type { Statement } from "../../grammar/statement.ts";
import type { Verdict } from "../../src/log/event.ts";

/** Every phrase of the sample day as it is meant to be read, gone through by eye. */
export const READINGS: Readonly<Record<string, readonly [Verdict, ...Statement[]]>> = {
  "start the session": ["log", { kind: "session", act: "start" }],
  "rig one, depth one metre eighty, size sixteen hook, on pellet": [
    "log",
    { kind: "change", rig: "1", depthMm: 1800, unit: { length: "m" }, hook: 16, bait: "pellet" },
  ],
  "out to thirteen metres": ["log", { kind: "change", distanceMm: 13000, unit: { length: "m" } }],
  "lash twenty five centimetres": ["log", { kind: "change", lashMm: 250, unit: { length: "cm" } }],
  "potted in a hundred grams of pellet": [
    "log",
    { kind: "feed", amountG: 100, bait: "pellet", how: "pot", unit: { weight: "g" } },
  ],
  "water eleven degrees, sun's out": [
    "log",
    { kind: "conditions", waterC: 11 },
    { kind: "conditions", sky: "sun" },
  ],
  "rig's in": ["log", { kind: "drop" }],
  "little knock": ["log", { kind: "sign", sort: "knock" }],
  liner: ["log", { kind: "sign", sort: "liner" }],
  "skimmer, twelve ounces": [
    "log",
    { kind: "fish", species: "skimmer", weightG: 340.1942775, unit: { weight: "oz" } },
  ],
  feeding: ["log", { kind: "feed" }],
  "going in": ["log", { kind: "drop" }],
  bite: ["log", { kind: "sign", sort: "bite" }],
  "missed one": ["log", { kind: "sign", sort: "missed" }],
  "you had any yet": ["ignore"],
  "skimmer one pound": [
    "log",
    { kind: "fish", species: "skimmer", weightG: 453.59237, unit: { weight: "lb" } },
  ],
  "fifty grams of pellet in the pot": [
    "log",
    { kind: "feed", amountG: 50, bait: "pellet", how: "pot", unit: { weight: "g" } },
  ],
  "F1, one pound four": [
    "log",
    { kind: "fish", species: "f1", weightG: 566.9904625, unit: { weight: "lb" } },
  ],
  "nudge me every five minutes": ["log", { kind: "remind", everyMs: 300000 }],
  "hook pulled": ["log", { kind: "loss", cause: "pulled" }],
  "how's it going": ["ignore"],
  "roach six ounces": [
    "log",
    { kind: "fish", species: "roach", weightG: 170.09713875, unit: { weight: "oz" } },
  ],
  "note, fish topping by the reeds": ["log", { kind: "note", text: "fish topping by the reeds" }],
  "rig two, depth sixty centimetres, size eighteen hook": [
    "log",
    { kind: "change", rig: "2", depthMm: 600, unit: { length: "cm" }, hook: 18 },
  ],
  "on red maggot": ["log", { kind: "change", bait: "maggot", baitNote: "red" }],
  "F1, one pound eight": [
    "log",
    { kind: "fish", species: "f1", weightG: 680.388555, unit: { weight: "lb" } },
  ],
  "fed twice": ["log", { kind: "feed", times: 2 }],
  "F1 one pound twelve": [
    "log",
    { kind: "fish", species: "f1", weightG: 793.7866475, unit: { weight: "lb" } },
  ],
  "missed it": ["log", { kind: "sign", sort: "missed" }],
  "F1, two pounds": [
    "log",
    { kind: "fish", species: "f1", weightG: 907.18474, unit: { weight: "lb" } },
  ],
  "F1, one pound six, thirty five centimetres": [
    "log",
    {
      kind: "fish",
      species: "f1",
      weightG: 623.68950875,
      lengthMm: 350,
      unit: { weight: "lb", length: "cm" },
    },
  ],
  "that was a lovely fish": ["ignore"],
  "carp, four pounds two": [
    "log",
    { kind: "fish", species: "carp", weightG: 1871.06852625, unit: { weight: "lb" } },
  ],
  "no, make that four eight": [
    "log",
    { kind: "amend", of: "last", set: { weightG: 2041.165665, unit: { weight: "lb" } } },
  ],
  "another F1, one and a half pounds": [
    "log",
    { kind: "fish", species: "f1", weightG: 680.388555, unit: { weight: "lb" } },
  ],
  "lost one": ["log", { kind: "loss", cause: "off" }],
  "stop nudging": ["log", { kind: "remind", everyMs: 0 }],
  "F1 one pound ten": [
    "log",
    { kind: "fish", species: "f1", weightG: 737.08760125, unit: { weight: "lb" } },
  ],
  "F1 two pounds, feeding": [
    "log",
    { kind: "fish", species: "f1", weightG: 907.18474, unit: { weight: "lb" } },
    { kind: "feed" },
  ],
  "carp three pounds twelve": [
    "log",
    { kind: "fish", species: "carp", weightG: 1700.9713875, unit: { weight: "lb" } },
  ],
  "which depth is best": ["log", { kind: "ask", what: "best-depth" }],
  "F1 one pound four": [
    "log",
    { kind: "fish", species: "f1", weightG: 566.9904625, unit: { weight: "lb" } },
  ],
  "snapped me": ["log", { kind: "loss", cause: "snapped" }],
  "lash twenty centimetres": ["log", { kind: "change", lashMm: 200, unit: { length: "cm" } }],
  "F1 one pound eight": [
    "log",
    { kind: "fish", species: "f1", weightG: 680.388555, unit: { weight: "lb" } },
  ],
  "what have I got": ["log", { kind: "ask", what: "total" }],
  "F1, one pound twelve": [
    "log",
    { kind: "fish", species: "f1", weightG: 793.7866475, unit: { weight: "lb" } },
  ],
  "carp five pounds": [
    "log",
    { kind: "fish", species: "carp", weightG: 2267.96185, unit: { weight: "lb" } },
  ],
  "last one was a mirror, five pounds four": [
    "log",
    {
      kind: "amend",
      of: "last",
      set: { species: "carp", weightG: 2381.3599425, unit: { weight: "lb" } },
    },
  ],
  "potted in fifty grams of pellet": [
    "log",
    { kind: "feed", amountG: 50, bait: "pellet", how: "pot", unit: { weight: "g" } },
  ],
  "F1 two pounds two": [
    "log",
    { kind: "fish", species: "f1", weightG: 963.88378625, unit: { weight: "lb" } },
  ],
  "wind's picked up": ["log", { kind: "conditions", wind: "rising" }],
  "taking a break": ["log", { kind: "session", act: "pause" }],
  "did you see the match on Saturday": ["ignore"],
  "back on": ["log", { kind: "session", act: "resume" }],
  "lost a foul hooked one": ["log", { kind: "loss", cause: "foul" }],
  "ten centimetres shallower": ["log", { kind: "change", depthByMm: -100, unit: { length: "cm" } }],
  "carp, four pounds": [
    "log",
    { kind: "fish", species: "carp", weightG: 1814.36948, unit: { weight: "lb" } },
  ],
  "F1, one pound six": [
    "log",
    { kind: "fish", species: "f1", weightG: 623.68950875, unit: { weight: "lb" } },
  ],
  "fish, three pounds, ten centimetres shallower, feeding": [
    "log",
    { kind: "fish", weightG: 1360.77711, unit: { weight: "lb" } },
    { kind: "change", depthByMm: -100, unit: { length: "cm" } },
    { kind: "feed" },
  ],
  "scratch that": ["log", { kind: "withdraw", of: "last" }],
  "F1 one pound two": [
    "log",
    { kind: "fish", species: "f1", weightG: 510.29141625, unit: { weight: "lb" } },
  ],
  "carp three pounds eight": [
    "log",
    { kind: "fish", species: "carp", weightG: 1587.573295, unit: { weight: "lb" } },
  ],
  "how's the net": ["log", { kind: "ask", what: "net" }],
  "new net": ["log", { kind: "net" }],
  "three small roach": ["log", { kind: "fish", count: 3, species: "roach" }],
  "how long since the last one": ["log", { kind: "ask", what: "last-fish" }],
  "it's gone quiet on me": ["ignore"],
  "rig one": ["log", { kind: "change", rig: "1" }],
  "on the worm": ["log", { kind: "change", bait: "worm" }],
  "potted in a hundred grams of groundbait": [
    "log",
    { kind: "feed", amountG: 100, bait: "groundbait", how: "pot", unit: { weight: "g" } },
  ],
  "tench, four pounds, forty five centimetres": [
    "log",
    {
      kind: "fish",
      species: "tench",
      weightG: 1814.36948,
      lengthMm: 450,
      unit: { weight: "lb", length: "cm" },
    },
  ],
  "perch one pound": [
    "log",
    { kind: "fish", species: "perch", weightG: 453.59237, unit: { weight: "lb" } },
  ],
  "skimmer, one pound two": [
    "log",
    { kind: "fish", species: "skimmer", weightG: 510.29141625, unit: { weight: "lb" } },
  ],
  "fish thirty two was one pound ten": [
    "log",
    { kind: "amend", of: 32, set: { weightG: 737.08760125, unit: { weight: "lb" } } },
  ],
  "crucian, fourteen ounces": [
    "log",
    { kind: "fish", species: "crucian", weightG: 396.89332375, unit: { weight: "oz" } },
  ],
  "bream three pounds": [
    "log",
    { kind: "fish", species: "bream", weightG: 1360.77711, unit: { weight: "lb" } },
  ],
  "which rig is best": ["log", { kind: "ask", what: "best-rig" }],
  "back on rig two": ["log", { kind: "change", rig: "2" }],
  "in to eleven metres, on caster": [
    "log",
    { kind: "change", distanceMm: 11000, unit: { length: "m" }, bait: "caster" },
  ],
  "fed by catapult, caster": ["log", { kind: "feed", bait: "caster", how: "catapult" }],
  "he's had two pounds off me": ["ignore"],
  "carp, six pounds eight, fifty five centimetres": [
    "log",
    {
      kind: "fish",
      species: "carp",
      weightG: 2948.350405,
      lengthMm: 550,
      unit: { weight: "lb", length: "cm" },
    },
  ],
  "dropped off at the net": ["log", { kind: "loss", cause: "net" }],
  "F1 two eight": [
    "log",
    { kind: "fish", species: "f1", weightG: 1133.980925, unit: { weight: "lb" } },
  ],
  "what's my pace": ["log", { kind: "ask", what: "pace" }],
  "how long left": ["log", { kind: "ask", what: "time-left" }],
  "F1, about two pounds": [
    "log",
    { kind: "fish", species: "f1", weightG: 907.18474, approx: true, unit: { weight: "lb" } },
  ],
  "roach forty": [
    "check",
    { kind: "fish", species: "roach", lengthMm: 400, unit: { length: "cm" } },
  ],
  "carp three pounds": [
    "log",
    { kind: "fish", species: "carp", weightG: 1360.77711, unit: { weight: "lb" } },
  ],
  "what's my rate": ["log", { kind: "ask", what: "rate" }],
  "skimmer ten ounces": [
    "log",
    { kind: "fish", species: "skimmer", weightG: 283.49523125, unit: { weight: "oz" } },
  ],
  "all out": ["log", { kind: "session", act: "stop" }],
};
