/** What the pictures show, in words; quantities come in already written. */

const inHundred = (chance: number): string =>
  `${Math.min(99, Math.max(1, Math.round(100 * chance)))} in 100`;

const plural = (count: number, one: string, many: string): string =>
  `${count} ${count === 1 ? one : many}`;

export const chartWords = {
  inHundred,
  climb: {
    title: (from: string, to: string, total: string) =>
      `Weight landed from ${from} to ${to}, rising to ${total} as spoken; what happened when stands beneath.`,
    rows: { fish: "Fish", loss: "Lost", sign: "Bites", feed: "Feed", change: "Changes" },
    key: "The thick line is the weight as spoken. Striped is where the true weight lies, 95 times in 100.",
    keyWeighed:
      "The thick line is the weight as spoken. The thin one, or the stripes, is the true weight by what the scales said.",
    weighed: (weight: string) => `By the scales ${weight}.`,
    likely: (lower: string, upper: string) => `In truth likely between ${lower} and ${upper}.`,
    turn: (clock: string) => `turn, ${clock}`,
    turned: (clock: string, before: string, after: string, chance: number) =>
      `The pace turned about ${clock}, from ${before} to ${after} fish an hour (${inHundred(chance)}).`,
    noTurn: "No turn in the pace stands out.",
    tooFew: "Too few fish to tell whether the pace turned.",
    breaks: (count: number) => (count === 1 ? "Shaded: one break." : `Shaded: ${count} breaks.`),
    table: {
      caption: "Hour by hour",
      from: "From",
      fish: "Fish",
      weight: "Weight",
      lost: "Lost",
    },
  },
  depths: {
    title: (fish: number, lost: number) =>
      `Depths over the day, the surface above: ${plural(fish, "fish", "fish")} as dots and ${plural(lost, "loss", "losses")} as crosses, the depth fished as a line.`,
    key: "A dot is a fish, larger where it was heavier; a cross is one lost. The line is the depth fished.",
    bottom: (depth: string) => `bottom, ${depth}`,
    table: {
      caption: "By depth",
      depth: "Depth",
      time: "Fished",
      fish: "Fish",
      lost: "Lost",
    },
    unknown: (fish: number) =>
      `${plural(fish, "fish has", "fish have")} no depth: none had been said by then.`,
    none: "No depth was said, so there is nothing to draw. Say “depth sixty” when a rig goes in.",
  },
  rates: {
    title: (what: string) => `Fish an hour by ${what}, each with its limits, on one scale.`,
    key: "Circles are fish an hour. The line is where the true rate lies, 95 times in 100; broken where there are too few fish to name a rate.",
    beside: (fish: number, time: string) => `${plural(fish, "fish", "fish")} in ${time}`,
    besideSessions: (fish: number, time: string, sessions: number) =>
      `${fish} in ${time}, ${plural(sessions, "session", "sessions")}`,
    told: (name: string, rate: string, lower: string, upper: string) =>
      `${name}: ${rate} an hour, ${lower} to ${upper}`,
    tooFew: (name: string, upper: string) => `${name}: too few to tell, up to ${upper} an hour`,
    nothing: (name: string) => `${name}: not fished long enough to say anything`,
    verdicts: {
      clear: (name: string, chance: number) => `${name} is best, with ${inHundred(chance)}.`,
      close: "Too close to call: no one of them is best with any certainty.",
      alone: (name: string) => `Only ${name}: nothing to hold it against.`,
      "too-few": "Too few fish to tell which is best.",
    },
    more: (count: number) =>
      `${plural(count, "other", "others")} fished for less time ${count === 1 ? "is" : "are"} left out.`,
    none: (what: string) => `No ${what} was said, so there is nothing to set side by side.`,
    factors: {
      depth: "Depth",
      rig: "Rig",
      bait: "Bait",
      distance: "Distance",
      hook: "Hook",
      hour: "Hour",
    },
    hour: (hour: number) => `hour ${hour}`,
    rig: (rig: string) => `rig ${rig}`,
    hook: (size: number) => `hook ${size}`,
  },
  bites: {
    title: (curves: number) =>
      `How long bites took: the share of drops that had had one, rising with the time since the rig went in, for ${plural(curves, "set-up", "set-ups")}.`,
    key: "The line rises with the share of drops that had a bite by then. Striped are its limits, 95 times in 100.",
    beside: (drops: number, bites: number) =>
      `${plural(drops, "drop", "drops")}, ${plural(bites, "bite", "bites")}`,
    half: (name: string, median: string, lower: string, upper: string) =>
      `${name}: half had a bite within ${median}, ${lower} to ${upper}`,
    halfOpen: (name: string, median: string, lower: string) =>
      `${name}: half had a bite within ${median}, ${lower} at the least`,
    tooFew: (name: string, bites: number, drops: number) =>
      `${name}: too few to tell, ${plural(bites, "bite", "bites")} in ${plural(drops, "drop", "drops")}`,
    shares: { none: "none", half: "half", all: "all" },
    none: "No drops were said. Say “rig’s in” each time it goes in, and the wait for a bite is timed.",
    unnamed: "not said",
    more: (count: number) => `${plural(count, "other", "others")} with fewer drops left out.`,
  },
  scales: {
    title: (nets: number) => `Spoken weight against the scales, ${plural(nets, "net", "nets")}.`,
    spoken: "spoken, gaps filled in",
    scales: "scales",
    net: (number: number) => `Net ${number}`,
    beside: (spoken: string, scales: string) => `${spoken} → ${scales}`,
    none: "No net has been weighed yet. Once one is, it shows how your spoken weights compare.",
    low: (percent: number) => `You speak about ${percent} % low`,
    high: (percent: number) => `You speak about ${percent} % high`,
    even: "You speak the weights about right",
    limits: (lower: string, upper: string, nets: number) =>
      `between ${lower} and ${upper}, from ${plural(nets, "net", "nets")}`,
    lowBy: (percent: number) => `${percent} % low`,
    highBy: (percent: number) => `${percent} % high`,
    exact: "exact",
    tooFew: (lower: string, upper: string, nets: number) =>
      `Too few nets to tell how you judge: with ${nets}, anything between ${lower} and ${upper} is possible.`,
  },
  seconds: (count: number) => `${count} s`,
  minutes: (count: number) => `${count} min`,
  minutesAndSeconds: (minutes: number, seconds: number) =>
    seconds === 0 ? `${minutes} min` : `${minutes} min ${seconds} s`,
} as const;
