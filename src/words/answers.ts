/** What is answered to the spoken questions; values come formatted for the ear. */
export const answerWords = {
  notStarted: "The session has not started.",
  ended: (total: string) => `The session has ended. ${total}`,

  nothingYet: "Nothing yet.",
  noWeights: (fish: string) => `${fish}, none with a weight.`,
  total: (weight: string, fish: string) => `${weight} from ${fish}.`,
  totalPart: (weight: string, without: number, fish: string) =>
    `${weight}, and ${without} of ${fish} without a weight.`,
  scalesLikely: (lower: string, upper: string) => `The scales: likely ${lower} to ${upper}.`,
  scalesAtLeast: (lower: string) => `The scales: likely ${lower} or more.`,
  noNetWeighed: "No net has been on the scales yet, so your weights may be a fifth out.",
  fewNetsWeighed: (nets: string) => `That rests on ${nets} weighed.`,
  spokenLow: (percent: number, nets: string) => `Over ${nets} you spoke ${percent} in 100 too low.`,
  spokenHigh: (percent: number, nets: string) =>
    `Over ${nets} you spoke ${percent} in 100 too high.`,
  spokenRight: (nets: string) => `Over ${nets} you spoke right on the whole.`,

  noFish: "No fish yet.",
  count: (fish: string) => `${fish}.`,
  countByKind: (fish: string, kinds: string) => `${fish}: ${kinds}.`,
  notNamed: "not named",

  noneLost: "None lost.",
  lost: (fish: string) => `${fish} lost.`,
  lostHow: (fish: string, causes: string) => `${fish} lost: ${causes}.`,
  lostBy: {
    off: "came off",
    pulled: "on a pulled hook",
    snapped: "snapped",
    foul: "foul hooked",
    net: "at the net",
  },

  noBites: "No bites or knocks are in the log yet.",
  bites: (signs: string) => `In the log: ${signs}.`,
  signs: {
    bite: (times: number) => `${times} ${times === 1 ? "bite" : "bites"}`,
    missed: (times: number) => `${times} missed`,
    knock: (times: number) => `${times} ${times === 1 ? "knock" : "knocks"}`,
    liner: (times: number) => `${times} ${times === 1 ? "liner" : "liners"}`,
  },

  noneSized: "No fish has a weight or a length yet.",
  aFish: "a fish",
  fish: "fish",
  othersNotWeighed: (without: number) => ` ${without} without a weight.`,

  notFed: "No feed is in the log yet.",
  lastFed: (time: string) => `${time} since the last feed.`,
  fed: (baits: string) => ` Fed so far: ${baits}.`,
  weightOf: (weight: string) => `${weight} of`,
  weightAndTimesOf: (weight: string, times: string) => `${weight} and ${times} more of`,

  noFishAfter: (time: string) => `No fish yet, after ${time}.`,
  sinceLast: (time: string, fish: string) => `${time} since the last fish: ${fish}.`,

  net: (number: number, weight: string, fish: string) => `Net ${number}: ${weight} from ${fish}.`,
  netRoom: (number: number, weight: string, where: string) => `Net ${number}: ${weight}, ${where}.`,
  netRoomOf: (number: number, weight: string, limit: string, where: string) =>
    `Net ${number}: ${weight} of ${limit}, ${where}.`,
  over: (weight: string) => `${weight} over the limit`,
  room: (weight: string) => `room for ${weight}`,
  withoutWeight: (without: number, fish: string) => ` ${without} of ${fish} without a weight.`,
  netOdds: (now: string, next: string) =>
    `Over its limit by now: ${now}. With one fish more: ${next}.`,
  netNoLimit: "No limit is set for the nets.",

  noEnd: "No end time is set.",
  timeUp: (time: string) => `Time was up ${time} ago.`,
  timeLeft: (time: string) => `${time} left.`,
  startsIn: (time: string) => `The start is in ${time}.`,

  noSetUp: "No set-up has been named.",
  setUp: (parts: string) => `${parts}.`,
  depth: (length: string) => `depth ${length}`,
  lash: (length: string) => `${length} of line above the float`,

  tooFewForRate: (fish: string, time: string) => `${fish} in ${time}: too few for a rate.`,
  perHour: (rate: string) => `${rate} fish an hour.`,
  rateRestsOn: (fish: string, time: string, range: string) =>
    `${fish} in ${time}: ${range} an hour.`,
  perHourLate: (rate: string, late: string) =>
    `${late} fish an hour in the last half hour, ${rate} over the session.`,
  faster: " Faster than before.",
  slower: " Slower than before.",
  rateSure: (range: string) => `${range} an hour, 19 in 20.`,
  fasterOdds: (odds: string) => ` Faster now than before: ${odds}.`,

  noneNamed: (factor: string) => `Too few to tell: no ${factor} has been fished by name.`,
  tooFew: (lines: string) => `Too few to tell: ${lines}.`,
  only: (name: string, line: string) => `Only ${name} so far: ${line}.`,
  evidence: (fish: string, where: string, time: string) => `${fish} ${where} in ${time}`,
  leads: (name: string, rate: string, range: string) => `${name}: ${rate} an hour, ${range}.`,
  follows: (name: string, rate: string, range: string) => `${name}: ${rate}, ${range}.`,
  range: (lower: string, upper: string) => `${lower} to ${upper}`,
  orMore: (lower: string) => `${lower} or more`,
  noClearBest: "No clear best.",
  promising: (name: string, fish: string, time: string) =>
    `${name} is worth another try: ${fish} in ${time}.`,
  beats: (odds: string, other: string) => ` ${odds} that it beats ${other}.`,
  beatsAll: (odds: string, of: number) => ` ${odds} that it is the best of the ${of}.`,
  restsOn: (lines: string) => ` ${lines}.`,
  at: (name: string) => `at ${name}`,
  on: (name: string) => `on ${name}`,
  inHour: (name: string) => `in ${name}`,
  hook: (size: string) => `size ${size}`,
  hour: (number: string) => `hour ${number}`,

  noPace: (total: string) => `No end time is set, so no pace. ${total}`,
  tooFewForPace: "Too few fish with a weight to tell.",
  heading: (weight: string) => `Heading for ${weight}.`,
  headingBetween: (weight: string, lower: string, upper: string) =>
    `Heading for ${weight}, likely between ${lower} and ${upper}.`,
  paceSure: (lower: string, upper: string) =>
    `Between ${lower} and ${upper} by the end, 19 in 20, if it goes on as it went.`,
  targetReached: "The target is reached.",
  targetMissed: "The target was missed.",
  targetNeeds: (weight: string, fish: string, odds: string) =>
    `The target needs ${weight} an hour${fish}.${odds}`,
  aboutFish: (rate: string) => `, about ${rate} fish`,
  odds: (odds: string) => ` ${odds} that it is reached.`,

  noEarlier: "No earlier session is kept here to go by.",
  tooFewEarlier: (sessions: string, hours: string) =>
    `${sessions} with ${hours} at a named depth: too few to tell where to start.`,
  startAt: (
    name: string,
    rate: string,
    range: string,
    hours: string,
    sessions: string,
    where: string,
  ) => `Start at ${name}: ${rate} an hour, ${range}, over ${hours} in ${sessions}${where}.`,
  startUnclear: (names: string, hours: string, sessions: string, where: string) =>
    `No depth stands out over ${hours} in ${sessions}${where}: ${names} are alike.`,
  atWater: (water: string) => ` at ${water}`,
  allWaters: " on all waters",
  startWith: (what: string) => ` ${what} did best.`,

  noDrops: "No drops are timed: say “rig's in” when it goes in, and “bite” when one comes.",
  tooFewBites: (bites: string, drops: string) => `Too few to tell: ${bites} in ${drops}.`,
  biteTime: (median: string, range: string) =>
    `Half of the bites come within ${median}, likely ${range}.`,
  biteTimeAtLeast: (drops: string) => `Fewer than half of ${drops} had a bite.`,
  biteTimeSure: (range: string) => `${range}, 19 in 20.`,
  bitesOfDrops: (bites: string, drops: string) => ` ${bites} in ${drops}.`,

  noFallSpeed: (bait: string) =>
    `How fast ${bait} sinks is not set, so a bite has no depth: time it in Set-up.`,
  noBait: "No bait has been named, so how fast it sinks is not known.",
  tooFewDeep: (bites: string) => `Too few to tell: ${bites} with a depth.`,
  onTheDrop: (some: string, all: string, depth: string, range: string) =>
    `${some} of ${all} came on the drop, half of those ${range} down, about ${depth}.`,
  mostlySettled: (all: string, onTheDrop: number) =>
    `Only ${onTheDrop} of ${all} came on the drop for sure, the others at the rig's depth or near it.`,
  allSettled: (all: string) =>
    `None of ${all} came on the drop for sure: they came at the rig's depth or near it.`,

  moodTooFew: (fish: string) => `Too few to tell: ${fish}.`,
  quiet: (gap: string, usual: string) =>
    `Yes, quiet: ${gap} since the last fish, and they came every ${usual}.`,
  cameOn: (usual: string) => `It has come on: faster than one every ${usual}.`,
  steady: (usual: string) => `Steady: one every ${usual} or so.`,
  turned: (clock: string, before: string, after: string, odds: string) =>
    ` It turned about ${clock}: ${before} an hour before, ${after} since. ${odds}.`,

  counted: "That is counted as it was heard.",
  stillToCheck: (entries: string) => ` ${entries} to check.`,
};
