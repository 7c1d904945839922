/** A note in the angler's own words; all that follows belongs to it. */
import { type Phrase, sure } from "./phrase.ts";

export const note: Phrase = {
  id: "note",
  patterns: [
    "[make | take | add | make me | can you make | please | quick | another | put | put in | write | log] [a | the] (note | notes | knote | note down) <text>",
  ],
  examples: {
    "note, fish topping by the reeds": [{ kind: "note", text: "fish topping by the reeds" }],
    "make a note, change the elastic": [{ kind: "note", text: "change the elastic" }],
  },
  states(said) {
    const text = said.first("text");
    return text === undefined ? undefined : sure({ kind: "note", text });
  },
};
