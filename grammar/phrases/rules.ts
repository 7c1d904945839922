/**
 * Rules shared by several phrases, in JSGF notation. They are written out where they are used, so
 * they must stay short lists without repeats.
 */
export const RULES: Readonly<Record<string, string>> = {
  caught:
    "got | got me | had | i've got | i've had | i've just had | i have | caught | i've caught | landed | i've landed | netted | banked | took | swung in | that one's | that one was | they're | these are | that's | that is | there's | here's | it's | this is | this one's | with | of | plus | we've got | and got | and that's | in comes | bonus | in the net | on the bank | into the net | another one | and another | and another one",
  article: "a | an | another | the | some | one more | a few | few | my first | first",
  /** How far out; a pole is measured in metres, but any length is understood. */
  metres: "<length>",
  /** So few that they are lost in one breath. */
  few: "<number> | <count>",
  more: "more | other | of the | of them",
  quality:
    "small | little | silver | dinky | tiny | big | large | nice | good | decent | lovely | better | proper | cracking | lump of a | average | tidy | smaller | bigger | fat | long | bonus | stamp of | big old | chunky | stockie | foul hooked | fowl hooked",
  about:
    "about | around | roughly | nearly | almost | approximately | approx | just under | just over | just shy of | a bit over | a bit under | over | under | maybe | probably | perhaps | say | getting on for | pushing | nudging | just under the | just over the | the best part of | best part of | close to | near enough | somewhere around | call it | easily | well over | a good | a shade over | a shade under | not far off | bout | at about | at around | at just under | at just over",
  roughly:
    "or so | or thereabouts | ish | odd | near enough | give or take | at a guess | or a bit more | or a bit less | i reckon | i'd say | or more | or just under | or just over | and a bit",
  switched:
    "on | on to | onto | now on | back on | back on to | back onto | back to | to | going | going on | going onto | going on to | going to | going for | going with | going back to | going back on | going over to | gone on | gone onto | gone on to | gone to | gone for | gone back to | gone back on | gone back onto | gone over to | gone with | go on | go on to | go onto | go over to | go to | go with | go back to | go back on | switching to | switching back to | switching over to | switched to | switched back to | switched over to | switch to | switch back to | switch over to | change to | changing to | changing over to | changed to | changed over to | changed back to | swapping to | swapping back to | swapping over to | swapped to | swapped over to | swapped back to | swapped for | swap to | swap over to | moving to | moving onto | moving on to | moved to | moved onto | moved on to | move to | move onto | trying | try | trying the | tried | using | use | used | fishing | fishing with | fishing on | starting on | starting with | started on | start on | putting | putting on | put on | picked up | picking up | pick up | over to | i'm back on | i'm back to | i'm on | i'm onto | i'm on to | i'm going onto | i'm now on | i'm going on | i'm going to try | i'm trying | i'm using | gonna try | having a go with | having a look on | having a go on",
  moved:
    "going | gone | go | come | came | coming | moved | moving | move | try it | trying it | pushing out | dropped back | going to fish | i'm going to fish | fish | fish it | push | pushed | pushed it | push it | pushed it out | pushing it | pushing | set | setting | depth | depth is | dropped | drop | dropping | try | trying | making it | made it | make it | take it | taking it | took it | put it | adjusted | fishing | now fishing | now | it's",
  been: "is | should've been | should of been |  was | were | should be | should have been | should say | needs to be | wants to be | weighed | went | measured | came in at | was actually | actually | was more like | is actually",
  fix: "make that | you've got that wrong it was | make it | make that one | make the last one | make last one | make the last fish | no make that | no make it | no it was | no that was | no | no wait | no sorry | sorry | sorry make that | sorry that's | sorry that was | sorry it was | correction | correction make that | correction that's | correction that was | correction it was | i mean | i meant | i meant to say | actually | actually make that | actually that was | actually that's | actually it was | actually it's | change that to | change it to | change last to | change the last one to | change last one to | change the last fish to | change last fish to | change the last entry to | correct that to | correct last to | correct the last one to | correct the last fish to | that should be | that should have been | should be | should have been | that was actually | it was actually | rather | or rather | not that | amend that to | amend last to | amend the last one to | amend last one to | that one should be | that one should have been | it should be | it should have been | scratch that make it | that needs to be | set that to | set the last fish to | set the last one to | set last to | edit that to | edit last to",
  last: "last one | the last one | last fish | the last fish | that last one | that last fish | last | that one | that fish | that | it | the previous one | previous fish | my last one | my last fish | the one before",
  numbered: "fish | fish number | number | the fish number",
};
