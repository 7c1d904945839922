import type { Paraphrases } from "./group.ts";

/** Changes of keepnet. */
export const net: Paraphrases = [
  {
    means: [{ kind: "net" }],
    said: [
      "new net",
      "next net",
      "fresh net",
      "changing nets",
      "changed nets",
      "change of net",
      "New net.",
      "onto a new net",
      "starting a new net",
      "onto the next net",
      "another net in",
      "new net in",
      "into a fresh net",
      "going into a new net",
    ],
  },
  {
    means: [{ kind: "net", number: 3 }],
    said: [
      "net three",
      "net 3",
      "net number three",
      "onto net three",
      "into net three",
      "on to net 3",
      "Net 3.",
      "switch to net three",
      "changed to net 3",
      "third net",
      "onto the third net",
      "going into net three",
      "starting net three",
      "now net three",
    ],
  },
  {
    means: [{ kind: "net", number: 2 }],
    said: [
      "net two",
      "net 2",
      "net number two",
      "onto net two",
      "second net",
      "into the second net",
      "switching to net 2",
      "going to net two",
      "net number 2",
      "started net two",
      "back to net two",
    ],
  },
];
