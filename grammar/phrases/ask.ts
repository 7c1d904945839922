/** Questions the phone answers aloud. */

import { bestQuestions } from "./ask-best.ts";
import { logQuestions } from "./ask-log.ts";
import { waterQuestions } from "./ask-water.ts";
import { ask, SO_FAR, WHATS } from "./asked.ts";
import type { Phrase } from "./phrase.ts";

const total = ask(
  "total",
  [
    `(what have i | what've i | what i've | how much have i | what weight have i | how much weight have i | how many pounds have i | how many kilos have i | what do i) (got | caught | had | got in weight | put together | got in) [${SO_FAR}]`,
    `[${WHATS}] [my | the] (total | total weight | weight | running total | bag | bag weight | running weight | overall weight | weight so far | bag so far | overall total | tally) [${SO_FAR}]`,
    "(what weight am i on | what am i on | how much am i on | what am i up to | where am i up to | how much is that | how much weight is that | what does that make | what's that make it | what have i got up to | how heavy am i | what weight is that | what's that come to | how am i doing for weight | how much is that so far | what've i got | give me the total | give us my total | what's my lot | how many pounds so far | how many pounds is that | how many pounds | what am i sitting on | what weight's that | what's in the bag | how much weight) [so far | now | altogether | in total]",
  ],
  ["what have I got", "total weight", "what weight am I on"],
);

const count = ask(
  "count",
  [
    "(how many's that | how many's | how many is that | that's how many | how many does that make it | how many now) [now | so far | altogether]",
    `how many [fish | <species>] [have i | have we | i've | we've] (got | had | caught | landed | have i had | have i got | have i caught | have i landed | i got | i had) [${SO_FAR}]`,
    `how many <species> [${SO_FAR} | in the net | is that | am i on]`,
    `have i (had | caught | got) any (<species> | fish) [${SO_FAR}]`,
    `how many [fish] (is that | are that | 's that | am i on | so far | i got | is it | does that make | am i up to | now | do i have | in the net) [${SO_FAR}]`,
    `[${WHATS}] [my | the] (fish count | count | number of fish | how many fish | tally of fish | fish total | catch count | how many | fish tally) [${SO_FAR}]`,
  ],
  [
    "how many's that",
    "how many carp have I had",
    "how many tench",
    "have I had any bream",
    "how many am I on",
    "how many fish have I had",
    "how many is that",
    "fish count",
  ],
);

const lastFish = ask(
  "last-fish",
  [
    "(how long | how long's | how long is | how long has | how many minutes | time | what's the time | how long's it been | how long has it been | how much time has passed | how much time has gone | how long is it | what time | how much time | how long was it | how long's that) [it | been | it been] since [the | my | i had | i last had | that | i've had | i caught] [the | my | a] (last one | last fish | last | last bite | fish | one | last catch | had one | had a fish | caught one | caught a fish | caught | catch)",
    "(when was | how long ago were | when were | when did i have | when did i get | when did i catch | when did i last have | when did i last | when did i last get | how long ago was | how long ago did i have | what time was | when's | time of | how long ago | when was it i had | what time did i have | what time did i catch | how long ago did i last | what time did i get) [the | my | a | i] (last one | last fish | fish | one | catch | catch one | have one | have a fish | catch a fish | last catch | had one | get one | last)",
    "(what was | what's | what is | how big was | how heavy was | what weight was | what did i catch) [the | my] (last fish | last one | last catch | last)",
    "what did (that one | the last one | the last fish | my last fish | my last one) weigh",
  ],
  [
    "how long since the last one",
    "when was the last fish",
    "what was my last fish",
    "what did the last one weigh",
  ],
);

const rate = ask(
  "rate",
  [
    `[${WHATS}] [my | the | our] (rate | catch rate | fish per hour | fish <duration> | catching rate | hourly rate | rate per hour | weight per hour | pounds per hour | strike rate) [${SO_FAR}]`,
    "how many [fish | pounds] [am i catching | am i getting | am i having | am i averaging] (<duration> | per hour) [am i catching | am i getting | is that | am i doing | am i averaging]",
    "what am i (catching | getting | averaging | doing) (<duration> | per hour)",
    "how (fast | quick | quickly) am i (catching | getting them | going | getting fish)",
    "(what rate am i catching at | what rate am i catching | what am i catching per hour | what rate am i on | what am i averaging | what rate is that | how often am i catching | what rate am i going at | how often am i getting one)",
  ],
  [
    "catch rate",
    "fish an hour",
    "how many an hour",
    "what am I catching an hour",
    "how fast am I catching",
    "what rate am I catching at",
  ],
);

const THE_NET =
  "the net | this net | my net | the nets | net | that net | the keepnet | my keepnet | this one";

const net = ask(
  "net",
  [
    "(how much is in | what's in | how's | how much have i got in | how many in | how many are in | how full is | what have i got in) net (<number> | one)",
    `(how's | how is | how are | how about | what about | what's in | how full's | how full is | how heavy is | how heavy's | what have i got in | how much have i got in | how much is in | how many are in | what is in | how much weight is in | what weight is in | what weight's in | how close is | how much is left in | how much have i left in | how much room in | how much room is in | how much room's left in | how much room have i got in | how much room is there in | how much space in | how much more in | how far off is | how's the weight in | how much weight have i got in | what's the weight in | how much can i still put in | how many in | how much in | how much space is left in | how much room is left in | how near is) (${THE_NET}) [now | looking | doing | so far | to the limit | for weight | limit | left | getting on | to full | to being full | to its limit]`,
    `[${WHATS} | check | how much is] [the | my | this] (net weight | net limit | weight in the net | weight in this net | weight of the net | weight of this net | net total | net check | check the net | keepnet weight)`,
    "(how much more can the net take | how much more can i put in this net | how much more can i put in the net | how much more will the net take | how much more will this net take | am i near the net limit | am i close to the net limit | am i over the limit | am i over the net limit | is the net full | is the net near the limit | is this net near the limit | is the net over the limit | is this net full | how long till the net's full | do i need a new net | do i need to change nets | should i change nets | how far off the limit | how far off the net limit am i | how much left in the net | am i near the limit | how close am i to the limit | how close am i to the net limit | how far off the limit am i | how much room left in the net | is the net nearly full | is it time for a new net | am i near the limit in this net | how much can this net take | am i close to the limit | am i over in this net | how much have i got in this net | which net am i on | what weight's the net at | what's the net at | what weight is the net at | what's the net on | what net am i on | how close to the limit am i | how much more can this net take | is the net over | is this net nearly full | net status | is the net getting full)",
  ],
  ["how's the net", "how much is in net two", "net weight", "is the net full"],
);

const pace = ask(
  "pace",
  [
    `[${WHATS}] [my | the] (pace | projected weight | projection | forecast | projected total | projected finish | predicted weight | estimated finish | final weight going to be | projected bag) [looking | now | so far]`,
    "what pace am i on",
    "(what do i need | what do i still need | how much do i need | how much more do i need) [<duration> | per hour | now | for the target | for my target | to hit the target | to hit my target | to make the target]",
    "what (pace | weight) am i (on for | heading for | going to finish with | going to finish on | on course for)",
    "(am i on pace | am i on target | am i on for my target | what am i on for | what am i on course for | what will i finish with | how much will i finish with | how much will i end up with | how much will i have at the end | what will i have | what will i finish on | what will i end up with | what'll i end up with | what'll i finish with | what'll i have | what'll i finish on | where will i finish | where will i end up | what final weight am i heading for | where will i finish at this rate | what weight will i finish on | what weight will i finish with | am i going to make the target | am i going to make my target | what am i heading for | what am i going to finish with | what am i going to end up with | what will i have at the end | what will i end up on | what's it looking like for the end | what will i weigh | am i on track | am i ahead of target | am i behind target | am i going to make it | will i make my target | will i make the target | will i get to my target |  what am i going to weigh | what am i going to weigh in | am i ahead or behind | what will i weigh in with | what will i weigh in | where am i heading | at this rate what will i finish with | at this rate what will i have | what am i going to end on | am i on course | am i on course for my target | will i hit my target | am i going to hit my target | how am i doing against my target | how am i doing against the target | am i ahead of my target | what will i end with | what will i finish with at this pace | what's my finishing weight going to be) [at this rate | by the end | at the end]",
  ],
  [
    "what's my pace",
    "what pace am I on",
    "what weight am I heading for",
    "what am I on for",
    "what do I need an hour",
  ],
);

const timeLeft = ask(
  "time-left",
  [
    "how (long | much longer | much time | many minutes | many hours | long's | long is | much time's | much time is | many more minutes) [is | have i | i | do i have | is there] [got] (left | remain | to go | till the end | until the end | till the all out | until the all out | till all out | until all out | have i got | till we finish | till the finish | until the finish | till i finish | to the end | to the all out | before the all out | till the whistle | before all out | remaining | to all out | to fish | until we finish | i got | got left | have i got left | till the end of the match | until the whistle | before the end | have we got left | have we got | have i left | till it's all out)",
    "(how long | how much longer | what time | how much time) (have i got | have we got | do i have | have i) [left]",
    `[${WHATS}] [the | my | how much] (time left | time to go | time remaining | remaining time | time have i got left | time i've got left | time have we got left)`,
    "(when do i finish | when do we finish | when's the all out | when is the all out | what time do we finish | what time do i finish | what time is the all out | what time's the all out | when does it finish | when's it finish | when's all out | what time is all out | when does the match finish | when does the session end | what time's all out | when does it end)",
  ],
  ["how long left", "how much longer have I got", "time left", "when's the all out"],
);

const setUp = ask(
  "set-up",
  [
    `[${WHATS}] [my | the | current] (set up | setup | current set up | current setup | rig set up | rig setup | set up now | gear)`,
    `(${WHATS} | my | what's my | what's the) [my | the] [current] (depth | rig | bait | hook | hook size | distance | lash | hook bait | hookbait | line above the float | tackle) [now | again | at the moment | set at]`,
    "(what | which | what's the) (set up | setup | rig | depth | bait | hook | hook size | distance | size hook | lash | hookbait | hook bait | size of hook | line | float | tackle) [am i | have i | i'm | have i got | did i] (on | at | fishing | using | got on | set at | fishing at | set to | i on | have i got on | fishing on | fishing with | put on | got | i got on | fished at)",
    "(how far out am i | how deep am i | how far out am i fishing | how deep am i fishing | what am i fishing with | what am i using | what am i fishing | where am i fishing | what have i got on | what's on the hook | what size hook am i on | what am i set up with | what's my depth | what's my lash | what's my distance | what's my rig | what's my hook | what's my bait | what have i got on the hook | how far out am i now | how deep am i now | how deep's my rig | how deep is my rig | what depth's my rig | what depth is my rig at | what depth is my rig | how long is my lash | how long's my lash | what's my hook size | what's my hook bait | read me back my set up | read back my set up | remind me what i'm fishing with | remind me what i'm on | remind me what i've got on | what rig and depth am i on | which rig and depth am i on | what have i got set up | how am i set up | what bait have i got on the hook | how deep am i set) [again]",
  ],
  ["what's my set-up", "what's my current depth", "what rig am I on", "how deep am I"],
);

export const questions: readonly Phrase[] = [
  total,
  count,
  ...logQuestions,
  lastFish,
  rate,
  ...bestQuestions,
  ...waterQuestions,
  net,
  pace,
  timeLeft,
  setUp,
];
