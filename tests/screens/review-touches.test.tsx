/** No common correction takes more than three touches, from Review as it opens. */
import { render, waitFor } from "@testing-library/preact";
import { expect, test } from "vitest";
import type { Session } from "../../src/log/session.ts";
import { Review } from "../../src/screens/review/review.tsx";
import "./patience.ts";
import { fakeApp, type Line } from "./fake-app.ts";
import { Thumb } from "./touches.ts";

const MOST = 3;
const POUND_G = 453.59237;
const OUNCE_G = POUND_G / 16;

const DAY: readonly Line[] = [
  [0, "start the session"],
  [1, "rig two, depth half a metre, on corn"],
  [5, "skimmer ten ounces"],
  [9, "F1 two pounds"],
  [12, "three small roach"],
  [15, "taking a break"],
];
const DOUBTFUL: Line = [20, "roach thirty", "roach thirteen"];

const SKIMMER = /^09:05/;
const F1 = /^09:09/;
const ROACH = /^09:12/;
const RIG = /^09:01/;

interface Case {
  what: string;
  /** Said beside the day's lines. */
  said?: Line;
  by: (thumb: Thumb) => Promise<void>;
  /** What is to be so afterwards. */
  see: (session: Session) => unknown;
  wanted: unknown;
}

const statementAt = (minute: number) => (session: Session) =>
  session.entries.find(({ at }) => new Date(at).getMinutes() === minute)?.statement;
const grams = (minute: number) => (session: Session) => {
  const fish = statementAt(minute)(session);
  return fish?.kind === "fish" ? Math.round((fish.weightG ?? 0) / OUNCE_G) : fish;
};

const CASES: readonly Case[] = [
  {
    what: "a doubt is settled as it stands",
    said: DOUBTFUL,
    by: (thumb) => thumb.touch("Right as it is"),
    see: (session) => session.entries.at(-1)?.verdict,
    wanted: "log",
  },
  {
    what: "a doubt is settled by another guess",
    said: DOUBTFUL,
    by: (thumb) => thumb.touch("Roach, 13 ounces"),
    see: grams(20),
    wanted: 13,
  },
  {
    what: "a doubtful entry is taken out",
    said: DOUBTFUL,
    by: (thumb) => thumb.touch("Take out"),
    see: (session) => session.withdrawn.length,
    wanted: 1,
  },
  {
    what: "a weight is a pound too low",
    by: async (thumb) => {
      await thumb.touch(F1);
      await thumb.touch("Weight up 1 lb");
      await thumb.touch("Save");
    },
    see: grams(9),
    wanted: 48,
  },
  {
    what: "a weight is nine ounces too low",
    by: async (thumb) => {
      await thumb.touch(F1);
      await thumb.hold("Weight up 1 oz", 9);
      await thumb.touch("Save");
    },
    see: grams(9),
    wanted: 41,
  },
  {
    what: "a weight was never said",
    by: async (thumb) => {
      await thumb.touch(ROACH);
      await thumb.hold("Weight up 1 oz", 3);
      await thumb.touch("Save");
    },
    see: grams(12),
    wanted: 3,
  },
  {
    what: "a species that was caught today",
    by: async (thumb) => {
      await thumb.touch(SKIMMER);
      await thumb.touch("roach");
      await thumb.touch("Save");
    },
    see: statementAt(5),
    wanted: expect.objectContaining({ species: "roach" }),
  },
  {
    what: "a species that nobody caught yet",
    by: async (thumb) => {
      await thumb.touch(SKIMMER);
      await thumb.touch("zander");
      await thumb.touch("Save");
    },
    see: statementAt(5),
    wanted: expect.objectContaining({ species: "zander" }),
  },
  {
    what: "a bait",
    by: async (thumb) => {
      await thumb.touch(RIG);
      await thumb.touch("worm");
      await thumb.touch("Save");
    },
    see: ({ setUp }) => setUp.bait,
    wanted: "worm",
  },
  {
    what: "a count",
    by: async (thumb) => {
      await thumb.touch(ROACH);
      await thumb.touch("Count up 1");
      await thumb.touch("Save");
    },
    see: statementAt(12),
    wanted: expect.objectContaining({ count: 4 }),
  },
  {
    what: "an entry is taken out",
    by: async (thumb) => {
      await thumb.touch(F1);
      await thumb.touch("Take out");
    },
    see: (session) => session.withdrawn.length,
    wanted: 1,
  },
  {
    what: "an entry that was taken out comes back",
    said: [20, "scratch that"],
    by: (thumb) => thumb.touch(/^Bring back/),
    see: (session) => session.withdrawn.length,
    wanted: 0,
  },
  {
    what: "the last correction is undone",
    said: [20, "fish two was a tench"],
    by: (thumb) => thumb.touch("Undo"),
    see: statementAt(9),
    wanted: expect.objectContaining({ species: "f1" }),
  },
  {
    what: "a time is some minutes late",
    by: async (thumb) => {
      await thumb.touch(F1);
      await thumb.hold("Time down 1 min", 2);
      await thumb.touch("Save");
    },
    see: statementAt(7),
    wanted: expect.objectContaining({ species: "f1" }),
  },
  {
    what: "an entry belongs before the one before it",
    by: async (thumb) => {
      await thumb.touch(F1);
      await thumb.touch(/^Put before 09:05 Skimmer/);
      await thumb.touch("Save");
    },
    see: ({ entries }) =>
      entries.flatMap(({ statement }) => (statement.kind === "fish" ? [statement.species] : [])),
    wanted: ["f1", "skimmer", "roach"],
  },
  {
    what: "a fish was missed that was like another",
    by: async (thumb) => {
      await thumb.touch(SKIMMER);
      await thumb.touch("More to do");
      await thumb.touch("One more like it");
    },
    see: ({ count }) => count,
    wanted: 6,
  },
  {
    what: "a fish was missed, of a species of the day, with its weight",
    by: async (thumb) => {
      await thumb.touch("Skimmer");
      await thumb.hold("Weight up 1 oz", 12);
      await thumb.touch("Add: skimmer");
    },
    see: ({ count, spokenG }) => [count, Math.round(spokenG / OUNCE_G)],
    wanted: [6, 10 + 32 + 12],
  },
  {
    what: "a fish was missed that nobody knows more of than its weight",
    by: async (thumb) => {
      await thumb.touch("Fish");
      await thumb.hold("Weight up 1 lb", 3);
      await thumb.touch("Add: fish");
    },
    see: ({ spokenG }) => Math.round(spokenG / OUNCE_G),
    wanted: 10 + 32 + 48,
  },
  {
    what: "a lost fish was missed",
    by: async (thumb) => {
      await thumb.touch("Lost fish");
      await thumb.touch("Snapped");
      await thumb.touch("Add: lost fish");
    },
    see: ({ entries }) => entries.at(-1)?.statement,
    wanted: { kind: "loss", cause: "snapped" },
  },
  {
    what: "a line that was taken for talk is kept",
    said: [20, "they reckon the far bank is better"],
    by: (thumb) => thumb.touch("Keep as a note"),
    see: (session) => session.entries.at(-1)?.statement.kind,
    wanted: "note",
  },
  {
    what: "a rig",
    by: async (thumb) => {
      await thumb.touch(RIG);
      await thumb.touch("3");
      await thumb.touch("Save");
    },
    see: ({ setUp }) => setUp.rig,
    wanted: "3",
  },
  {
    what: "a depth",
    by: async (thumb) => {
      await thumb.touch(RIG);
      await thumb.hold("Depth up 10 cm", 3);
      await thumb.touch("Save");
    },
    see: ({ setUp }) => setUp.depthMm,
    wanted: 800,
  },
  {
    what: "what the scales said, a little more than was spoken",
    by: async (thumb) => {
      await thumb.hold("The scales said, net 1 up 1 oz", 7);
      await thumb.touch("Enter net 1");
    },
    see: ({ nets }) => Math.round((nets[0]?.weighedG ?? 0) / OUNCE_G),
    wanted: 10 + 32 + 7,
  },
  {
    what: "what the scales said, pounds and ounces out",
    by: async (thumb) => {
      await thumb.hold("The scales said, net 1 up 1 lb", 3);
      await thumb.hold("The scales said, net 1 down 1 oz", 4);
      await thumb.touch("Enter net 1");
    },
    see: ({ nets }) => Math.round((nets[0]?.weighedG ?? 0) / OUNCE_G),
    wanted: 10 + 32 + 48 - 4,
  },
];

test.each(CASES)("at most three touches: $what", async ({ said, by, see, wanted }) => {
  const app = await fakeApp([...DAY, ...(said ? [said] : [])]);
  render(<Review app={app} />);
  expect(see(app.session.value)).not.toEqual(wanted);
  const thumb = new Thumb();
  await by(thumb);
  await waitFor(() => expect(see(app.session.value)).toEqual(wanted));
  expect(thumb.touches).toBeLessThanOrEqual(MOST);
});
