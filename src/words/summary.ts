/** What a session came to. */
import { causeWords } from "./causes.ts";

export const summaryWords = {
  title: "Summary",
  notStarted:
    "This session has not started yet. Once it has, its sums stand here. Earlier ones are under Sessions.",
  inAll: "In all",
  asSpoken: "as spoken",
  byScales: "by the scales",
  likely: (lower: string, upper: string) => `Likely ${lower} to ${upper} in truth.`,
  fish: (count: number) => `${count} fish`,
  inTime: (time: string) => `in ${time} of fishing`,
  unweighed: (count: number) => `${count} without a weight, not in the weight above.`,
  toLookAt: (count: number) => `${count} still to look at`,
  species: {
    title: "Fish",
    caption: "By species",
    name: "Species",
    fish: "Fish",
    weight: "Weight",
    notNamed: "Not named",
    notSaid: "not said",
    best: (best: string) => `Best: ${best}`,
  },
  lost: {
    title: "Lost",
    none: "None was said to be lost.",
    causes: causeWords,
  },
  went: { title: "How it went" },
  worked: {
    title: "What worked",
    by: "Side by side by",
    caution:
      "The hours differ as well as the set-ups: what was fished when they fed looks better than it is.",
  },
  depths: { title: "By depth" },
  bites: { title: "How long bites took", by: "Bites by" },
  setUps: {
    title: "Set-ups",
    fish: (count: number) => `${count} fish`,
    came: (weight: string, time: string) => `${weight ? `, ${weight}` : ""} in ${time}`,
    caution: "Few fish say little about a set-up: what differs by one or two is mostly luck.",
  },
  nets: {
    title: "Nets",
    caption: "Spoken against weighed",
    net: "Net",
    fish: "Fish",
    spoken: "Spoken",
    scales: "Scales",
    notYet: "not yet",
    enter: "Enter what the scales said",
  },
} as const;
