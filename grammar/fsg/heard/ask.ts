/** How questions are heard. */
const BEST = (what: string, on: string) =>
  `[/2/ what's the | which is the] best ${what} | (/2/ which | what) ${what} (/4/ is best | is working | is working best | am i catching most ${on} | should i (use | fish) | is catching most | is doing best) | which of the ${what}s is best | (which | what) ${what}'s (best | working best | been best) | what's been the best ${what}`;

export const HEARD_ASK: Readonly<Record<string, string>> = {
  "ask-total":
    "/4/ (/3/ what have i | what've i) got [so far | now] | how much [weight] have i (/2/ got | caught) [so far] | [/2/ what's my | what's the] [running] total [weight] | what weight (am i on | have i got) | what's my weight [so far] | what's the total | what's my bag weight | how many pounds have i got",
  "ask-count":
    "/4/ how many [/2/ fish] (have i (/2/ got | had | caught) | am i on) [so far] | how many (is | fish is) that | how many's that | [what's the | what's my] fish count | how many fish [so far] | number of fish | how many (<species-many>) have i had",
  "ask-lost":
    "/2/ how many have i lost [so far] | how many fish have i lost | how many lost | have i lost many",
  "ask-bites": "how many bites have i (had | missed) | how many have i missed | how many missed",
  "ask-again": "repeat that | repeat the answer",
  "ask-biggest":
    "/2/ [/2/ what's my | what's the | what was my] biggest [/2/ fish] [so far] | what's my best fish",
  "ask-fed":
    "/2/ when did i last feed | how long since i [last] fed | how much have i fed [so far] | what have i fed",
  "ask-last-fish":
    "/5/ how long since (/4/ the last one | the last fish | my last fish | i had a fish) | how long ago was the last (fish | one) | when was (the | my) last (fish | one) | time since [the] last fish | how long's it been since the last (fish | one) | when did i last (catch | have one)",
  "ask-rate":
    "/3/ [/2/ what's my | what's the] [/2/ catch] rate [now] | (fish | how many) an hour | how many fish an hour | (how many fish | fish) per hour | how fast am i catching | what rate am i catching at | what am i catching an hour | how many an hour am i catching",
  "ask-best-depth": BEST("depth", "at"),
  "ask-best-rig": BEST("rig", "on"),
  "ask-best-bait": BEST("bait", "on"),
  "ask-best-distance":
    "[what's the | which is the] best distance | which distance is best | what distance should i fish",
  "ask-best-hook":
    "[what's the | which is the] best hook | which hook is best | what hook should i use | which of the hooks is best",
  "ask-best-hour":
    "[what's the | what was the] best hour | which hour (is | was) best | which hour did i catch most in",
  "ask-start":
    "where (should | do) i start | what (depth | rig | bait) should i start (at | on | with) | what worked [here] last time | what do the earlier sessions say",
  "ask-bite-depth":
    "how deep are they [biting | feeding] | are they (on the drop | on the bottom | up in the water) | at what depth do the bites come",
  "ask-bite-time":
    "how long (do [the] bites take | does a bite take | am i waiting for a bite) | [what's the] time to a bite | bite time",
  "ask-mood":
    "has it (gone quiet | slowed down | picked up | changed) | is it (slowing down | picking up | going quiet) | have they gone off | when did it (go quiet | slow down | change)",
  "ask-sure": "how sure (are you | is that) | can i trust that",
  "ask-net":
    "/4/ how's (/3/ the | my | this) net | how is the net | [what's the] net weight | (how much is | what's) in (the | my | this) net | (how much is | what's) in net <digit> | is the net full | how full is the net | how full's the net | how's net <digit> | how much room in the net | how close is the net to the limit | am i near the net limit",
  "ask-pace":
    "/4/ [/2/ what's my | what's the] pace | how's (my | the) pace | what pace am i on | what (weight am i | am i) heading for | what am i on (for | course for) | am i on (target | track | pace) | what will i (finish with | end up with | finish on) | what weight will i finish on | [what's my] projected weight | am i going to make the target",
  "ask-time-left":
    "/4/ how long (/3/ left | to go | have i got | have i got left | is left) | how much (longer have i got | time have i got | time have i got left | time is left | time left) | time left | when's the all out | how long (till | until) the (end | all out) | how many minutes left",
  "ask-set-up":
    "/4/ [/2/ what's my | what's the | what is my] set up | what's my [current] (depth | rig | bait | hook) | (what | which) (rig | depth | bait | set up) am i on | how deep am i [fishing] | what depth am i (at | fishing) | what hook (am i on | have i got on) | how far out am i [fishing] | what distance am i at | what am i fishing with | read me my set up",
};
