/** What is said unasked; values come formatted for the ear. */
export const warningWords = {
  netFull: (net: number, weight: string, limit: string) =>
    `Net ${net} is at its limit: ${weight} of ${limit}. Change nets.`,
  netMayBeOver: (net: number, weight: string, limit: string) =>
    `Net ${net} may be over its limit: ${weight} of ${limit} by your word.`,
  netOneMore: (net: number, weight: string, limit: string) =>
    `One more fish may put net ${net} over its limit: ${weight} of ${limit}.`,
  lash: (said: string, most: string) =>
    `Too much line above the float: ${said}, and ${most} is allowed.`,
  baitUsedUp: (bait: string, limit: string) => `The limit of ${limit} of ${bait} is used up.`,
  baitBanned: (bait: string) => `${bait} is not allowed here.`,
  nets: (used: string, allowed: string) => `${used} in use, and ${allowed} allowed.`,
  early: (time: string) => `Too early: the start is in ${time}.`,
  timeNear: "Ten minutes left.",
  timeUp: "Time is up.",
  sinks: (rig: string) => `${rig} sinks: it has more shot than its float carries.`,
  ownRig: (name: string) => `The ${name} rig`,
  numberedRig: (number: string) => `Rig ${number}`,
  quiet: (gap: string, usual: string) =>
    `Gone quiet: ${gap} without a fish, and they came every ${usual}.`,
  on: "It has come on: they come faster than before.",
  nudge: "Nudge",
};
