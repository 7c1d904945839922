/** How the session's acts, reminders, corrections and what is taken back are heard. */
export const HEARD_TALK: Readonly<Record<string, string>> = {
  yes: "/4/ yes [that's right] | /2/ yeah | yep | /2/ that's right | that's correct | right as it is | leave it",
  note: "/3/ [make a | take a] note <text>",
  withdraw:
    "/6/ scratch (/3/ that | the last one) | /6/ [no] (/2/ undo | /2/ delete | cancel | forget | /2/ take out | take off | remove | scrap | scrub) (/3/ that | that one | /2/ the last one | the last fish) | undo | take that (/2/ out | off | back) | that (was | is) wrong | /4/ (/2/ scratch | /2/ delete | /3/ take out | cancel | remove | scrap) fish [number] <to-ninety-nine> | take fish <to-ninety-nine> (out | off) | (delete | scratch | take out) the <ordinal> fish | ignore that | delete last entry | undo the last entry | no scratch that | fish <to-ninety-nine> needs taking out",
  "session-start":
    "/3/ start [/3/ the | a | a new] (/3/ session | match) | /2/ start fishing | starting [the session | now | fishing] | begin [the] (session | fishing) | session start | new session | /2/ all in",
  "session-pause":
    "/3/ taking (/2/ a | my) (/2/ break | breather) | /2/ having (a break | a brew | lunch | my lunch | a breather) | /3/ pause [/2/ the session] | session pause | pause session | break time | taking five | take a break | going for a break | i'm taking a break | time for a break | taking <two-to-twenty> minutes out | stopping for (a bit | a brew) | a (five | ten) minute break",
  "session-resume":
    "/3/ back on [it] | /3/ back fishing [again] | /2/ resume [/2/ the session | session] | session resume | /2/ break over | break's over | fishing again | back from my break | i'm back on | (carry on | continue) the session | continue session",
  "session-stop":
    "/3/ [/2/ that's the | that's] all out | /3/ (/2/ stop | /3/ end | finish | close) [/2/ the] (/3/ session | fishing | match) | session (over | stop | end) | end of [the] session | /2/ packing up [now] | finished fishing | that's me done | that's it for today | that's the match over",
  "talkback-tones": "tones only",
  "talkback-short": "short answers",
  "talkback-full": "full answers",
  nudge:
    "/6/ (/4/ nudge me | /3/ remind me | a nudge | give me a nudge | set a nudge | set a reminder | nudge) every (/6/ <duration> | minute | hour | half hour) | remind me to (<text>) every <duration> | (/2/ remind | nudge) me every <duration> to (<text>) | every <duration> (remind me to (<text>) | give me a nudge) | nudge me once a minute",
  "no-nudge":
    "/4/ stop (/3/ nudging | /3/ nudging me | /2/ reminding me | the nudges | the reminders) | no more (nudges | nudging | reminders) | [/2/ turn the] (nudges | reminders) off | turn off the (nudge | nudges | reminders) | nudge off | don't nudge me | cancel the (nudge | nudges | reminder)",
  correction:
    "/6/ <fix> (/3/ [a | an] <species> | /4/ <weight> [<length>] | /2/ <length> | <two-to-nine> <to-fifteen> | <to-fifteen> | <bait> | foul hooked | rig <digit> | depth <depth-length> | <depth-length> deep | net <digit> | <metres> [out] | size <to-twenty-four> hook | (a | an) <to-twenty-four> hook | hook pulled | snapped | lost one | <weight-of> <species> | a <weight-of> <species> | a <species> <weight> | <two-to-nine> <species-many> | a <two-to-twenty> pounder) | /4/ [no] [the | that] last (/3/ one | fish) [/3/ was | is] (/3/ [a | an] <species> [not (a | an) <species>] | /3/ <weight> | <length> | foul hooked | a foul hooker | a <weight-of> <species>) | /4/ (/4/ fish [number] <to-ninety-nine>) (/3/ was | is | should be) (/3/ <weight> [<length>] | /2/ <length> | /2/ (a | an) <species> | foul hooked | a <weight-of> <species> | <digit> <to-fifteen>) | (change | make | correct) fish <to-ninety-nine> [to] (<weight> | <length> | a <species> | foul hooked) | put fish <to-ninety-nine> down as (a | an) <species> | <fix> (a | an) <species> not (a | an) <species> | not (a | an) <species> (a | an) <species> | not <bait> <bait> | that one was foul hooked",
  fix: "/8/ make that | make it | no | no make (that | it) | /3/ correction | sorry | no sorry | /2/ actually | /2/ i meant | i mean | /2/ change that to | change the last (one | fish) to | no it was | that was | it was | /2/ that should be | that should have been",
};
