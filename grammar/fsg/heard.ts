/**
 * How each phrase is heard by a recogniser that is bound to the grammar. A phrase's own patterns
 * are generous, because a reader loses nothing by them; ears that must weigh every sentence
 * against all others hear worse with each one more. So they are bound to the usual ways of saying
 * a phrase. A test holds both together: what is heard here is read as that phrase, and every
 * example of a phrase can be heard.
 */

/** By phrase id, right-hand sides in JSGF notation. */
export const HEARD: Readonly<Record<string, string>> = {
  note: "[make a] note <text>",
  withdraw:
    "scratch (that | the last one) | [no] (undo | delete | cancel | forget | take out | take off) (that | that one | the last one | the last fish) | undo | take that (out | off) | that (was | is) wrong | (scratch | delete | take out | cancel) fish [number] <to-ninety-nine> | take fish <to-ninety-nine> out | (delete | scratch | take out) the <ordinal> fish",
  "session-start":
    "start [the] (session | match) | start fishing | starting [the session | now] | begin [the] (session | fishing) | session start | all in",
  "session-pause":
    "taking (a | my) (break | breather) | having (a break | a brew | lunch | my lunch) | pause [the session] | session pause | break time | taking <two-to-twenty> minutes out | stopping for a bit",
  "session-resume":
    "back on [it] | back fishing | resume [the session] | session resume | break over | fishing again | back from my break",
  "session-stop":
    "[that's the | that's] all out | (stop | end | finish) [the] (session | fishing | match) | session (over | stop | end) | packing up | that's me done | that's it for today",
  "talkback-tones": "tones only",
  "talkback-short": "short answers",
  "talkback-full": "full answers",
  "ask-total":
    "what have i got [so far | now] | how much [weight] have i got [so far] | [what's my] total [weight] | what weight (am i on | have i got) | what's my weight | what's the total",
  "ask-count":
    "how many [fish] (have i (got | had) | am i on) [so far] | how many is that | how many's that | [what's the | what's my] fish count",
  "ask-last-fish":
    "how long since (the last one | the last fish | my last fish) | how long ago was the last (fish | one) | when was the last (fish | one)",
  "ask-rate":
    "[what's my | what's the] [catch] rate [now] | (fish | how many) an hour | how fast am i catching | what rate am i catching at | what am i catching an hour",
  "ask-best-depth":
    "[what's the | which is the] best depth | which depth (is best | is working | am i catching most at) | what depth should i fish | which of the depths is best",
  "ask-best-rig":
    "[what's the | which is the] best rig | which rig (is best | is working | am i catching most on) | what rig should i fish | which of the rigs is best",
  "ask-best-bait":
    "[what's the | which is the] best bait | which bait (is best | is working | am i catching most on | should i use) | what bait should i use | which of the baits is best",
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
    "how's (the | my | this) net | net weight | (how much is | what's) in (the | my | this) net | (how much is | what's) in net <digit> | is the net full | how full is the net | how's net <digit>",
  "ask-pace":
    "[what's my | what's the] pace | what pace am i on | what weight am i heading for | what am i on for | am i on (target | track)",
  "ask-time-left":
    "how long (left | to go | have i got | have i got left) | how much (longer have i got | time have i got | time is left) | time left | when's the all out",
  "ask-set-up":
    "[what's my | what's the | what is my] set up | what's my [current] (depth | rig | bait) | what (rig | depth | bait) am i on | how deep am i",
  nudge:
    "(nudge me | remind me | a nudge) [to (<text>)] every (<duration> | <two-to-twenty> | minute) | every <duration> remind me to (<text>) | remind me to (<text>) every <duration> | nudge me once a minute",
  "no-nudge":
    "stop (nudging | nudging me | reminding me | the nudges | the reminders) | no more (nudges | nudging | reminders) | [turn the] nudges off | don't nudge me | cancel the (nudge | nudges | reminder)",
  "lost-foul":
    "[i've] lost (a | another) (foul hooked one | foul hooker | foul hooked <species>) | foul hooked (<species> | one | fish) (came off | lost it | gone) | [the] hook pulled out of a foul hooked (one | fish | <species>)",
  "hook-pulled":
    "[lost (one | it | a fish | [a] <species>)] [the] hook (pulled | pulled out | came out) | [<species>] pulled out | pulled [the hook] out of (it | one | that one | a fish | a <species> | an <species>)",
  snapped:
    "[[a | lost a] <species>] snapped (me | me off | me up | off | the hooklength | the line) | [lost one | lost it] snapped | [the] (hooklength's | line's | hooklength | line) (gone | snapped | broke | broken) | snapped by (one | a fish | a <species> | an <species>) | (broke | smashed) me [off | up] | been (snapped | smashed) off",
  lost: "[i've | just] lost (one | it | him | that | that one | another | another one | a fish | that fish) [<at-net>] | lost (a | an | another | that) [big | good | nice | decent | small] (<species> | one | fish) [<at-net>] | (came off | come off | dropped off | fell off) [<at-net>] | (it's | he's | that's | it | he) (gone | come off | came off | off | dropped off | got off) [<at-net>] | [a | another | the] <species> (came off | come off | dropped off | got off) [<at-net>] | it's gone lost it | bumped (one | it | him | that one | another) [off]",
  "at-net": "at the net | netting it | on the way in | at the top kit",
  "lost-several":
    "[i've | just] lost (two | three | four | a couple of) (<species> | fish) | [just] lost (two | three | four) [of them]",
  lash: "[the | set the] (lash | line above the float) [at | to | is | is now] <short-length> | (shortened | lengthened) the lash to <short-length> | <short-length> of line above the float | lash <tens> [five]",
  "lash-by":
    "<short-length> (more | less | longer | shorter) lash | lash <short-length> (longer | shorter) | lash (longer | shorter) by <short-length> | (shortened | lengthened) the lash by <short-length> | added <short-length> to the lash",
  depth:
    "[set the | the | my] depth [is | at | to | now] <depth-length> | depth (<tens> [five] | one <tens>) | fishing <depth-length> deep | fishing at <depth-length> deep | plumbed up at <depth-length> | (shallowed | deepened) up to <depth-length> | <depth-length> deep",
  "depth-by":
    "[going | gone | come | moved | another] <short-length> (shallower | deeper) | (shallowed | deepened) up [by] <short-length> | (added | took) <short-length> (of depth | off the depth | to the depth) | [another] (five | ten | fifteen | twenty | thirty) (shallower | deeper) | (shallower | deeper) by (<short-length> | five | ten | twenty)",
  distance:
    "[going | gone | back | moved | come] (out to | in to | out at) (<metres> | <two-to-twenty>) | distance (<metres> | <two-to-twenty>) | [fishing | fishing at | line at] <metres> [out]",
  "distance-by":
    "[going | gone | moved] [another] (a metre | half a metre | two metres | three metres) (further out | further | closer | nearer | closer in | back) | (gone | going | come) (out | in) (a metre | another metre | half a metre | two metres | three metres)",
  "deeper-or-shallower":
    "[going | gone | come] [a bit | a touch | a little] (shallower | deeper) | (shallowed | deepened) up",
  rig: "[switching to | switched to | changed to | change to | back on | on to | on | gone to | now on | picked up] [the] rig [number] <digit> | [switching to | switched to | back on | on | on to | gone to] the (shallow | deep | margin | edge | short | long | other | dobber | light | heavy) (rig | rig now) | [switching to | back on | on] <own-rig> | top kit <digit> | changed rigs | swapped rigs [to number <digit>]",
  hook: "[new | changed to a | gone to a | on a] size <to-twenty-four> [hook] | hook [size | to size] <to-twenty-four> | (gone | going) (down | up) to (a | an) <to-twenty-four> [hook] | [stepped] [the] hook (down | up) to (a | an) <to-twenty-four> | hook's (a | an) <to-twenty-four> | tied on (a | an) <to-twenty-four> | changed the hook to (a | an) <to-twenty-four> | (smaller | bigger | new) hook",
  net: "(new | next | another | fresh) net | changed nets | change of net | [into | onto | on to | on] net [number] <digit> | (started | starting) [a] (new net | net <digit>) | net's changed to number <digit> | (onto | into) the <ordinal> net",
  "fed-by":
    "(potted | potting | cupped) in [<amount> [of]] [some] <bait> | (potted | potting | cupped) in [<amount> | twice | three times] | potted <bait> | (catapulted | catapulting | threw in | thrown in) [some] <bait> [by hand]",
  "fed-measure":
    "[another] (<digit> | a | another) (pot | pots | cup | cups | pouch | pouches | handful | handfuls | ball | balls) of <bait> [in] | [another] (<digit> | a) (pots | pot | pouches | pouch | balls of groundbait) [in] | (a bit of | bit of | some | a little | more) <bait> (in | going in) | <bait> with the (catty | catapult | pot) | using the catapult for some <bait> | <amount> of <bait> (in | in the pot | going in)",
  feeding:
    "(fed | feeding) [again] | (fed | feeding) (twice | once | three times | four times | again | by hand | by catapult) | (fed | feeding) [some | a little | more | by hand | by catapult] <bait> | (fed | feeding) <amount> [of <bait>] | twice fed | [a] bit (of | more) feed [in] | [some] more feed | feed (in | going in) | <two-to-nine> feeds | a little feed of <bait> | feeding the swim",
  amount:
    "(ten | twenty | thirty | forty | fifty | sixty | eighty | a hundred | a hundred and fifty | two hundred | three hundred) grams | half a pound | a pound | half a kilo | a kilo",
  "hook-bait":
    "[now | back | gone | going | switched | switching | changed] (on | on to) [the | a | double | single] <bait> [now] | (gone | back | going | switched | switching | changed | changing | change) (to | over to) [a | double | single] <bait> | <bait> on [the hook] | bait [change | is | now] <bait> | (changed | swapped) [the] bait (to | for) <bait> | i'll give <bait> a go | swapped <bait> for <bait> | baiting up with <bait> | <bait> instead | taking the <bait> off putting <bait> on | <bait> off <bait> on | with <bait> on | put a <bait> on | trying <bait>",
  "bare-bait": "double <bait>",
  bait: "[red | white | yellow] [four mil | six mil | eight mil] <bait-name>",
  temperature: "[minus] <two-to-twenty> [and a half] degrees | one degree | twenty <digit> degrees",
  fish: "[<lead>] [a | an | another] [<quality>] (<species> | fish) [<sizes>] [in the net] | [<lead>] [a | an | another] (<weight> | <length>) <species> [<length>] | [<lead>] (<to-fifteen> | a couple of | a few | half a dozen | a brace of) [small | little | nice] <species> | <species> [<about>] <weight> foul hooked | [<lead>] a foul hooked <species> [<sizes>] | <weight> <species> | <two-to-nine> <to-fifteen> <species> | <species> <tens>",
  sizes:
    "[<about>] <weight> [<length>] | <length> [<weight>] | <digit> <to-fifteen> | [<about>] a <two-to-twenty> pounder",
  lead: "got | had | landed | caught | netted | and | that's | i've got | i've had | got me | nice",
  "one-more":
    "(got | landed | had | caught | netted) one [<sizes>] [in the net] | [and | got] another [one] [<sizes>] [in the net] | one [more] in the net | (got | landed) a foul hooker [<sizes>] | one more [<sizes>]",
  "weight-only": "[got | about] a <two-to-twenty> pounder",
  bite: "[a | another | got a | had a | good | little | nice | got another | got another little | first | proper] bite | bites | [the] (float's | float) (gone under | buried | gone | away | under) | fish on | hooked one",
  missed:
    "missed (it | one | that | that one | him | another | a bite | the bite | that bite | another one) | missed | missed bite | bite missed | struck and missed [it] | struck at nothing",
  knock:
    "[a | another | little | small | a little | another little | got a | had a] (knock | tap | twitch | nibble) | [little] (knocks | taps) | [the] (float's | float) (dipped | knocked | twitched | bobbed)",
  liner:
    "[a | another | just a | got a | had a | that was a] (liner | line bite) | fish brushed the line",
  drop: "[the] (rig's | line's) (in | going in | back in | in again | out) | [the] rig (in | is in | going in | back in) | going (in | back in | in again) | (shipping | shipped) (out | back out) | back in | in again | [new | next] drop | (laid | lowered | dropped) the rig in",
  wind: "[the] (wind's | wind has | wind is | wind) (picked up | picking up | dropped | dropping | died down | gone round | got up | easing | getting up | changed) [to the <compass>] | (light | strong | <compass>) wind | [the] (wind | wind's) from the <compass> | flat calm | it's getting windy",
  compass:
    "north | south | east | west | north east | south west | south east | north west | northerly | southerly | easterly | westerly | south westerly | north westerly | south easterly | north easterly",
  sky: "[the] sun's (out | come out | gone in) | it's (raining | foggy | sunny | cloudy | drizzling | clouded over | stopped raining | started raining | overcast | bright) | rain's (stopped | started) | raining | overcast | cloudy | sunny | clouded over | drizzling | bright sunshine | heavy rain",
  "water-temperature":
    "[the] (water | water's | water is | water temperature | water temp | water temperature is) <temperature> | <temperature> in the water",
  "air-temperature":
    "[the] (air | air's | air is | air temperature | air temp | temperature | temperature is | air temperature is) <temperature> | <temperature> in the air",
  correction:
    "<fix> ([a | an] <species> | <weight> [<length>] | <length> | <two-to-nine> <to-fifteen> | <to-fifteen> | <bait> | foul hooked | rig <digit> | depth <depth-length> | net <digit> | hook pulled | snapped | lost one) | [no] [the] last (one | fish) [was | is] ([a | an] <species> [not (a | an) <species> | <weight>] | <weight> | <length>) | (fish [number] <to-ninety-nine>) (was | is) (<weight> [<length>] | <length> | (a | an) <species>) | put fish <to-ninety-nine> down as (a | an) <species> | <fix> (a | an) <species> not (a | an) <species> | not (a | an) <species> (a | an) <species>",
  fix: "make (that | it) | no | no make (that | it) | correction | sorry | no sorry | actually | i meant | change that to | change the last one to | no it was | that was | it was",
  "to-twenty-four":
    "ten | eleven | twelve | thirteen | fourteen | fifteen | sixteen | seventeen | eighteen | nineteen | twenty | twenty two | twenty four",
  weight:
    "<two-to-twenty> (pounds | pound) [<to-fifteen> [ounces | ounce]] | (one | a) pound [<to-fifteen> [ounces]] | [a | one] pound and (a half | a quarter) | half a pound | half pound | three quarters of a pound | three quarter pound | a quarter of a pound | <two-to-nine> and (a half | a quarter | three quarter) (pounds | pound) | one and (a half | a quarter | three quarter) pounds | <to-fifteen> (ounces | ounce) | <two-to-nine> point <digit> kilos | one point <digit> kilos | (a | one) kilo [and a half] | <two-to-nine> kilos | half a kilo | <two-to-nine> hundred grams",
  length:
    "<tens> [<digit>] (centimetres | centimetre) | <to-fifteen> inches | sixteen inches | eighteen inches | twenty inches | <to-fifteen> and (a half | a quarter) inches | (a | two) foot | half a metre",
  "short-length":
    "(five | ten | fifteen | twenty | twenty five | thirty | thirty five | forty | fifty) (centimetres | centimetre) | (an inch | <two-to-nine> inches | ten inches | twelve inches | eighteen inches) | (a | half a | two | one) (foot | metre | feet)",
  "depth-length":
    "<tens> [five] (centimetres | centimetre) | half a metre | (a | one) metre [<tens> | and a half | <tens> five] | two metres | one point <digit> metres | <two-to-nine> (foot | feet) [six | deep] | a foot [and a half] | eighteen inches | <two-to-twenty> inches | two and a half metres | three metres",
  metres:
    "<two-to-twenty> metres | <two-to-nine> and a half metres | eleven and a half metres | thirteen and a half metres | fourteen and a half metres",
  quality: "small | little | big | nice | good | decent | tiny | better",
  about: "about | nearly | around | just over | just under",
  duration:
    "<two-to-twenty> minutes | thirty minutes | a minute and a half | half an hour | an hour | thirty seconds",
};
