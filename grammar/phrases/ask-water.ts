/** Questions of what the water does: where to start, how deep and how fast they bite, whether it turned. */
import { ask } from "./asked.ts";
import type { Phrase } from "./phrase.ts";

const start = ask(
  "start",
  [
    "(where should i start | where do i start | where shall i start | where would you start | where's best to start | where is best to start | where should i begin | how should i start | what should i start with | what should i start on | what do i start with | where to start) [today | here | off | on this peg]",
    "(what | which) (depth | rig | bait) (should i start | do i start | shall i start) [on | at | with] [today | here]",
    "(what worked | what's worked | what has worked | what worked best | what did best | what caught) [best] (last time | before | here before | here last time | on earlier visits | in earlier sessions | here)",
    "what (do the earlier sessions say | did earlier sessions say | do earlier visits say | do my earlier sessions say)",
  ],
  [
    "where should I start",
    "what depth should I start at",
    "what worked here last time",
    "what do the earlier sessions say",
  ],
);

const biteDepth = ask(
  "bite-depth",
  [
    "how (deep | far down) (are they | are the fish | are the bites | do they bite | do the bites come | are they biting | are they feeding | are they taking it | are they sitting | are they taking | are the bites coming | do they take it) [now | today | at the moment]",
    "are they (on the drop | taking on the drop | coming on the drop | biting on the drop | on the bottom | off the bottom | up in the water | shallow | deep) [now | today]",
    "(where in the water are they | where in the water are they biting | at what depth do they bite | at what depth do the bites come | what depth do the bites come at | how many on the drop | how many came on the drop | how many bites on the drop)",
  ],
  ["how deep are they biting", "are they on the drop", "at what depth do the bites come"],
);

const biteTime = ask(
  "bite-time",
  [
    "how (long | quick | quickly | soon) (do bites take | do the bites take | does a bite take | are the bites taking | are bites taking | are they taking to bite | do they take to bite | does it take to get a bite | to get a bite | to a bite | till a bite | until a bite | for a bite | am i waiting for a bite | am i waiting for bites | do i wait for a bite | do i have to wait for a bite | do they bite | are the bites | are the bites coming | between bites)",
    "[what's the | what is the | tell me the | what's my] (bite time | bite times | time to a bite | waiting time | wait for a bite | usual wait) [now | so far]",
  ],
  ["how long do bites take", "time to a bite"],
);

const mood = ask(
  "mood",
  [
    "has it (gone quiet | slowed down | slowed up | slowed | died | died off | dried up | gone off | come on | picked up | changed | turned | got better | got worse | gone dead)",
    "is it (slowing down | slowing | picking up | getting better | getting worse | going quiet | dying off | drying up | coming on | speeding up)",
    "have they (gone off | backed off | moved off | come on | slowed down | switched off | switched on | gone quiet | slowed up)",
    "when did it (go quiet | slow down | change | pick up | turn | come on | go off | die off | dry up)",
  ],
  ["has it gone quiet", "is it slowing down", "have they gone off", "when did it go quiet"],
);

const sure = ask(
  "sure",
  [
    "how (sure | certain | confident | reliable) (are you | is that | is it | are you of that | are you about that | can i be | is this | of that)",
    "(how sure | how certain | what are the odds of that | what are the chances of that | how far can i trust that | can i trust that | how good is that figure)",
  ],
  ["how sure are you", "can I trust that"],
);

const again = ask(
  "again",
  [
    // "Say that again" is mostly for whoever sits beside the angler.
    "(repeat that | repeat the answer | repeat the last answer | repeat your answer | tell me that again | read that again) [please]",
  ],
  ["repeat that", "tell me that again"],
);

export const waterQuestions: readonly Phrase[] = [start, biteDepth, biteTime, mood, sure, again];
