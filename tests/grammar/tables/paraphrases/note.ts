import type { Paraphrases } from "./group.ts";

/** Notes: everything after the opening word, as it was said, trade words and all. */
export const note: Paraphrases = [
  {
    means: [{ kind: "note", text: "fish topping by the reeds" }],
    said: [
      "note, fish topping by the reeds",
      "note fish topping by the reeds",
      "Note fish topping by the reeds",
      "note: fish topping by the reeds",
      "make a note, fish topping by the reeds",
      "make a note fish topping by the reeds",
      "take a note, fish topping by the reeds",
    ],
  },
  {
    means: [{ kind: "note", text: "carp cruising in the margins" }],
    said: [
      "note carp cruising in the margins",
      "note, carp cruising in the margins",
      "make a note carp cruising in the margins",
      "take a note carp cruising in the margins",
      "note: carp cruising in the margins",
      "Note carp cruising in the margins",
    ],
  },
  {
    means: [{ kind: "note", text: "peg twelve caught two pounds more than me" }],
    said: [
      "note peg twelve caught two pounds more than me",
      "note, peg twelve caught two pounds more than me",
      "make a note, peg twelve caught two pounds more than me",
      "take a note peg twelve caught two pounds more than me",
      "note: peg twelve caught two pounds more than me",
    ],
  },
  {
    means: [{ kind: "note", text: "try the worm earlier next time" }],
    said: [
      "note try the worm earlier next time",
      "note, try the worm earlier next time",
      "make a note try the worm earlier next time",
      "take a note, try the worm earlier next time",
      "note: try the worm earlier next time",
    ],
  },
  {
    means: [{ kind: "note", text: "lost three in the snag on the left" }],
    said: [
      "note lost three in the snag on the left",
      "note, lost three in the snag on the left",
      "Note: lost three in the snag on the left",
      "make a note lost three in the snag on the left",
      "take a note, lost three in the snag on the left",
    ],
  },
  {
    means: [{ kind: "note", text: "bites on the drop" }],
    said: [
      "note bites on the drop",
      "note, bites on the drop",
      "make a note, bites on the drop",
      "take a note bites on the drop",
      "note: bites on the drop",
      "Note bites on the drop",
    ],
  },
  {
    means: [{ kind: "note", text: "change the elastic before the next match" }],
    said: [
      "note change the elastic before the next match",
      "note, change the elastic before the next match",
      "make a note change the elastic before the next match",
      "take a note change the elastic before the next match",
      "note: change the elastic before the next match",
    ],
  },
  {
    means: [{ kind: "note", text: "wind always off the dam here" }],
    said: [
      "note wind always off the dam here",
      "note, wind always off the dam here",
      "make a note wind always off the dam here",
      "take a note, wind always off the dam here",
      "note: wind always off the dam here",
    ],
  },
];
