/** How fish, and what was lost, are heard. */
export const HEARD_FISH: Readonly<Record<string, string>> = {
  fish: "/8/ [<lead>] [/8/ a | /2/ an | /4/ another | one more] [<quality>] (/6/ <species> | fish) [/4/ <sizes> | in the net] | /4/ [<lead>] [/3/ a | another] (/5/ <weight-of> | <length-of>) (/6/ <species> | fish) [<length> | in the net | foul hooked] | /2/ [<lead>] [another] (/3/ <few-fish> | /2/ <two-to-nine> | <to-fifteen>) [more] [small | little | nice] (/5/ <species-many> | fish) [<each>] | /2/ <sized-other> | /1/ [got | landed | another] [a] foul hooked <species> [<sizes>] | /1/ <species> [<sizes>] foul hooked [in the tail]",
  "sized-other":
    "/3/ <species> (/3/ <digit> <to-fifteen> | <tens> | a <two-to-twenty> pounder | <digit> and a half) | /2/ <two-to-nine> <to-fifteen> <species> | <weight> <length> <species> | [a] <two-to-twenty> pounder <species> | <about> a <weight-of> <species> | <species> [of] <weight> and <length> | [<about>] <weight> of <species>",
  each: "/3/ <weight> (/3/ each | apiece | a piece) | about <weight> each | at <weight> each | all <weight>",
  sizes:
    "/36/ [/3/ about | <about>] <weight> | /10/ <weight> <length> | /10/ [about] <length> [long] | /4/ <length> <weight> | /12/ <digit> <to-fifteen> | /5/ a <two-to-twenty> pounder | /4/ of <weight> | /4/ <weight> (or so | ish) | <weight> <tens> [five] | <digit> <to-fifteen> <length>",
  lead: "/4/ got | /2/ had | /2/ landed | caught | netted | /3/ and | /3/ that's | /3/ i've got | i've had | got me | it's | i've caught | i've landed | that was",
  "few-fish":
    "/3/ a couple of | couple of | a pair of | pair of | /2/ a few | half a dozen | a dozen | a brace of",
  "one-more":
    "/3/ (/3/ got | landed | had | caught | netted) (/4/ one [/3/ <sizes> | in the net | <species>] | another [in the net | <weight>]) | /3/ [and | got | that's] another [/3/ one] [/4/ <sizes> | in the net] | one [more] in the net | (got | landed) a foul hooker [<sizes>] | (got | landed) (one foul hooked | a foul hooked one) | /2/ one more [<weight>] | that's one more in the net",
  "weight-only":
    "/2/ [got | about] a <two-to-twenty> pounder [<length> | <tens>] | got about <weight> [a <species>]",
  species: "/30/ <species-usual> | <species-seldom> | own_species",
  "species-usual":
    "/8/ f1 | /8/ carp | /4/ skimmer | /4/ bream | /4/ roach | /4/ tench | /3/ perch | /2/ crucian | /2/ mirror | /2/ common | /2/ ide | /2/ rudd | /2/ chub | /2/ barbel | /2/ gudgeon | /2/ hybrid",
  "species-seldom":
    "goldfish | pike | eel | zander | trout | mirror carp | common carp | crucian carp | ghost carp | ghostie | koi | leather | stockie | f one | skimmer bream | roach bream hybrid | blade | orfe",
  "species-many":
    "/4/ roach | /4/ carp | /4/ skimmers | /4/ f1s | /3/ perch | /3/ gudgeon | /2/ bream | /2/ tench | /2/ rudd | hybrids | ide | crucians | chub | barbel | mirrors | commons | own_species",
  quality:
    "/3/ small | /3/ little | /3/ big | /3/ nice | /3/ good | /2/ decent | tiny | better | lovely | bonus",
  about:
    "/5/ about | /2/ nearly | /2/ around | just over | just under | roughly | getting on for | maybe | almost",
  lost: "/5/ [i've | just] lost (/5/ one | /2/ it | him | that | that one | /2/ another | another one | a fish | that fish) [<at-net>] | /3/ [just] lost (/3/ a | an | another | that) (/4/ [big | good | nice | decent] <species> | (big | good | nice | decent) one | (big | good | nice | decent) fish) [<at-net>] | /2/ (/3/ come off | /2/ came off | dropped off | fell off) [<at-net>] | /2/ (/3/ it's | he's | that's | it | he) (gone | /2/ come off | came off | off | dropped off | got off | fell off) [<at-net>] | /2/ [a | another | the | one] <species> (/2/ came off | come off | dropped off | got off | lost | fell off) [<at-net>] | <species-got-off> come off | it's gone lost it | slipped the hook | bumped (/2/ one | it | him | that one | another | a <species> | an <species>) [off] | (one | fish) lost | lost <species>",
  "species-got-off": "carp's | fish has | bream's | tench has",
  "at-net":
    "/4/ at the net | netting it | on the way in | at the top kit | on the net | right at the net",
  "lost-several":
    "[i've | just] lost (/2/ two | three | four | a couple of) [<species-many> | fish] | [just] lost (two | three | four) of them",
  "lost-foul":
    "/3/ [i've | just] lost (a | another) (/2/ foul hooked one | /2/ foul hooker | foul hooked fish | foul hooked <species>) | foul hooked (/2/ <species> | a <species> | one | fish) (came off | /2/ lost it | gone | and lost it) | foul hooked (lost it | and lost) | [the] hook pulled out of a foul hooked (one | fish | <species>) | foul hooker lost",
  "hook-pulled":
    "/4/ [the] hook (/3/ pulled | pulled out | came out) | /2/ [another] hook pull | hook's pulled [out] | /3/ lost (/3/ one | it | a fish | [a] <species>) [the] hook (/2/ pulled | pull | pulled out) | [<species>] pulled out | it's pulled out | <species> hook (pulled | pull) | straightened the hook | hook pulled (on that one | on a <species> | out of a <species> | <species>) | pulled [the hook] out of (/2/ it | one | that one | a fish | a <species> | an <species>)",
  snapped:
    "/4/ snapped (/3/ me | me off | me up | off | the hooklength | the line) | /2/ [a | lost a | lost | that] <species> snapped (/2/ me | me off | off) | lost (one | it) snapped [me] | /3/ [the] (/2/ hooklength's | /2/ line's | hooklength | /2/ line) (gone | snapped | broke | broken) | hook length snapped | snapped by (one | a fish | a <species> | an <species>) | /2/ (broke | smashed) me [off | up] | been (snapped | smashed | broke) off | (it's | he's) (snapped me | broke me | snapped) | <species> (broke me | smashed me [up]) | lost (/2/ one | a <species>) line (snapped | broke) | broken off",
};
