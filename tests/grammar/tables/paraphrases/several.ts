import { IN, LB, OZ, type Paraphrases } from "./group.ts";

/** Several statements in one utterance, in the order they were said. */
export const several: Paraphrases = [
  {
    means: [
      { kind: "fish", weightG: 2 * LB },
      { kind: "change", depthByMm: -100 },
      { kind: "feed" },
    ],
    said: [
      "fish, two pounds, ten centimetres shallower, feeding",
      "fish two pounds ten centimetres shallower feeding",
      "fish 2 lb 10 cm shallower feeding",
      "fish two pounds, then ten centimetres shallower, then feeding",
      "fish, two pounds, going ten centimetres shallower and feeding",
    ],
  },
  {
    means: [
      { kind: "fish", species: "carp", weightG: 2 * LB },
      { kind: "fish", species: "f1", weightG: LB },
    ],
    said: [
      "carp two pounds and an F1 one pound",
      "carp two pounds, F1 one pound",
      "carp 2 lb F1 1 lb",
      "two pound carp and a one pound F1",
      "carp, two pounds, and an F1, a pound",
      "a two pound carp, then a pound F1",
      "carp £2 and an F1 £1",
    ],
  },
  {
    means: [
      { kind: "fish", species: "roach", count: 3 },
      { kind: "fish", species: "perch" },
    ],
    said: [
      "three roach and a perch",
      "3 roach and a perch",
      "three small roach and a perch",
      "got three roach and a perch",
      "three roach then a perch",
      "another three roach and a perch",
    ],
  },
  {
    means: [{ kind: "fish", species: "skimmer", weightG: 10 * OZ }, { kind: "feed" }],
    said: [
      "skimmer ten ounces, feeding",
      "skimmer 10 oz feeding",
      "ten ounce skimmer, fed again",
      "skimmer ten ounces and fed again",
      "got a skimmer ten ounces, feeding",
      "skimmer ten ounces, feed going in",
    ],
  },
  {
    means: [{ kind: "feed" }, { kind: "drop" }],
    said: [
      "fed, going in",
      "feeding, rig's in",
      "fed again, rig's in",
      "feeding then going in",
      "fed and going back in",
      "feeding and shipping out",
      "feed's in, rig's in",
    ],
  },
  {
    means: [{ kind: "feed", amountG: 50, bait: "pellet", how: "pot" }, { kind: "drop" }],
    said: [
      "potted in fifty grams of pellet, rig's in",
      "potted in 50 grams of pellet rig's in",
      "potted in fifty grams of pellet and going in",
      "potted fifty grams of pellet, shipping out",
      "cupped in fifty grams of pellet, rig's in",
    ],
  },
  {
    means: [{ kind: "loss", cause: "off", species: "carp" }, { kind: "feed" }],
    said: [
      "lost a carp, feeding",
      "lost a carp feeding again",
      "lost a carp, fed again",
      "carp lost, feeding",
      "lost a carp and fed again",
    ],
  },
  {
    means: [
      { kind: "loss", cause: "snapped" },
      { kind: "change", rig: "3" },
    ],
    said: [
      "snapped me, rig three",
      "snapped me, going to rig three",
      "snapped off, switching to rig 3",
      "snapped me rig 3",
      "line snapped, onto rig three",
    ],
  },
  {
    means: [{ kind: "sign", sort: "missed" }, { kind: "drop" }],
    said: [
      "missed one, going back in",
      "missed it, rig's in",
      "missed one rig's back in",
      "missed it, back in",
      "missed that, going in again",
    ],
  },
  {
    means: [
      { kind: "sign", sort: "bite" },
      { kind: "fish", species: "carp", weightG: 3 * LB },
    ],
    said: [
      "bite, carp, three pounds",
      "bite carp 3 lb",
      "bite, got a carp three pounds",
      "bite and a three pound carp",
      "had a bite, three pound carp",
    ],
  },
  {
    means: [{ kind: "change", depthByMm: 6 * IN }, { kind: "drop" }],
    said: [
      "six inches deeper, rig's in",
      "six inches deeper and going in",
      "6 inches deeper going in",
      "gone six inches deeper, rig's in",
      "deepened up six inches, going in",
    ],
  },
  {
    means: [
      { kind: "change", bait: "worm" },
      { kind: "feed", bait: "caster", how: "pot" },
    ],
    said: [
      "on the worm, potted in some casters",
      "worm on the hook, pot of caster",
      "switched to worm, potted in caster",
      "changed to worm and potted in some casters",
      "trying worm, potted in some casters",
    ],
  },
  {
    means: [
      { kind: "net", number: 2 },
      { kind: "fish", species: "carp", weightG: 4 * LB },
    ],
    said: [
      "net two, carp four pounds",
      "net 2 carp 4 lb",
      "onto net two, four pound carp",
      "net two and a four pound carp",
      "second net, carp, four pounds",
    ],
  },
  {
    means: [{ kind: "fish", species: "bream", weightG: 3 * LB, lengthMm: 450 }, { kind: "drop" }],
    said: [
      "bream three pounds forty five centimetres, going back in",
      "bream 3 lb 45 cm rig's in",
      "bream, three pounds, forty five centimetres, rig's in",
      "three pound bream, forty five centimetres, back in",
      "bream three pounds, 45 centimetres, shipping back out",
    ],
  },
  {
    means: [
      { kind: "fish", species: "f1", weightG: 1 * LB + 8 * OZ },
      { kind: "change", distanceMm: 13000 },
    ],
    said: [
      "F1 pound and a half, out to thirteen metres",
      "F1 one eight, going out to thirteen metres",
      "F1 1lb 8oz out to 13 metres",
      "pound and a half F1, out to thirteen metres",
      "F1 one pound eight, out to 13 m",
    ],
  },
  {
    means: [
      { kind: "fish", species: "carp", weightG: 2 * LB },
      { kind: "ask", what: "total" },
    ],
    said: [
      "carp two pounds, what have I got",
      "carp 2 lb what have I got",
      "two pound carp, what's my total",
      "carp two pounds, how much have I got",
      "carp, two pounds, what's the total",
    ],
  },
  {
    means: [
      { kind: "fish", species: "carp", weightG: 2 * LB },
      { kind: "loss", cause: "off" },
    ],
    said: [
      "carp two pounds, lost one",
      "carp two pounds and lost one",
      "two pound carp and lost another",
      "carp 2 lb lost one",
      "carp two pounds, then lost one",
    ],
  },
  {
    means: [
      { kind: "loss", cause: "pulled" },
      { kind: "change", hook: 16 },
    ],
    said: [
      "hook pulled, size sixteen hook",
      "hook pulled, changed to a size 16 hook",
      "hook pull, gone to a size sixteen hook",
      "hook pulled, size 16 hook on",
      "hook pulled out, put a size sixteen hook on",
    ],
  },
  {
    means: [
      { kind: "loss", cause: "foul" },
      { kind: "change", depthByMm: -2 * IN },
    ],
    said: [
      "lost a foul hooked one, two inches shallower",
      "lost a foul hooker, shallowed up two inches",
      "lost a foul hooked one, going two inches shallower",
      "lost a foul hooked fish 2 inches shallower",
      "lost a foul hooker, going 2 inches shallower",
    ],
  },
  {
    means: [
      { kind: "conditions", wind: "*" },
      { kind: "change", rig: "4" },
    ],
    said: [
      "wind's picked up, rig four",
      "wind's picked up, switching to rig 4",
      "wind's getting up, onto rig four",
      "wind's picked up, changed to rig four",
      "wind's picked up so I'm onto rig four",
    ],
  },
  {
    means: [{ kind: "session", act: "start" }, { kind: "feed" }],
    said: [
      "start the session, feeding",
      "all in, feeding",
      "start the session, feed going in",
      "all in, fed",
      "start session, feeding",
    ],
  },
  {
    means: [
      { kind: "session", act: "resume" },
      { kind: "change", rig: "2" },
    ],
    said: [
      "back on, switching to rig 2",
      "back fishing, rig two",
      "break over, onto rig two",
      "resume the session, rig two",
      "back fishing and switching to rig two",
    ],
  },
  {
    means: [
      { kind: "fish", species: "tench", weightG: 3 * LB },
      { kind: "feed", bait: "pellet" },
      { kind: "drop" },
    ],
    said: [
      "tench three pounds, feeding pellets, rig's in",
      "tench 3 lb feeding pellet rig's in",
      "three pound tench, fed some pellets, going back in",
      "tench three pounds, fed pellets, back in",
      "got a tench, three pounds, fed some pellets, rig's in",
    ],
  },
  {
    means: [
      { kind: "sign", sort: "liner" },
      { kind: "change", depthByMm: -100 },
    ],
    said: [
      "liner, ten centimetres shallower",
      "line bite, ten centimetres shallower",
      "liner, shallowed up ten centimetres",
      "had a liner, going ten centimetres shallower",
      "another liner, 10 cm shallower",
    ],
  },
  {
    means: [
      { kind: "feed", times: 2 },
      { kind: "sign", sort: "knock" },
    ],
    said: [
      "fed twice, little knock",
      "fed twice, had a knock",
      "fed two times, got a knock",
      "fed twice and a little knock",
      "fed 2 times, a little knock",
    ],
  },
  {
    means: [{ kind: "feed" }, { kind: "note", text: "fish showing past the island" }],
    said: [
      "feeding, note, fish showing past the island",
      "fed again, note fish showing past the island",
      "feeding, make a note, fish showing past the island",
      "feeding, take a note, fish showing past the island",
      "fed, note fish showing past the island",
    ],
  },
  {
    means: [{ kind: "fish", species: "carp", weightG: 5 * LB }, { kind: "net" }],
    said: [
      "carp five pounds, new net",
      "carp 5 lb new net",
      "five pound carp, next net",
      "five pound carp and a new net",
      "carp, five pounds, onto a new net",
    ],
  },
  {
    means: [{ kind: "drop" }, { kind: "sign", sort: "bite" }],
    said: [
      "rig's in, bite",
      "rig's in, got a bite",
      "going in, bite",
      "rig's in, had a bite",
      "rig's in and a bite",
      "back in, bite",
    ],
  },
  {
    means: [
      { kind: "fish", species: "gudgeon", count: 2 },
      { kind: "fish", species: "skimmer", weightG: 8 * OZ },
      { kind: "feed" },
    ],
    said: [
      "two gudgeon, skimmer half a pound, feeding",
      "couple of gudgeon and a half pound skimmer, feeding",
      "two gudgeon, eight ounce skimmer, fed again",
      "2 gudgeon 8 oz skimmer feeding",
      "pair of gudgeon and a skimmer eight ounces, feeding",
    ],
  },
];
