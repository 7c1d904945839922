/** Starting, pausing and ending a session. */
import type { StatementOf } from "../statement.ts";
import { fixedPhrase, type Phrase } from "./phrase.ts";

const act = (
  name: StatementOf<"session">["act"],
  patterns: readonly string[],
  examples: readonly string[],
): Phrase => fixedPhrase(`session-${name}`, { kind: "session", act: name }, patterns, examples);

const SESSION =
  "the session | the fishing | session | a session | a new session | new session | my session | the match | match | this session | logging | the log | recording | the practice | practice session";

export const start = act(
  "start",
  [
    `(start | begin | starting | beginning | started | open | let's start | i'm starting | kick off | there's the whistle start | whistle's gone start | begin) (${SESSION} | fishing)`,
    "(session | match | new session) (start | started | starts | begin | begins | is on)",
    "[that's the | it's the | that's | here's the] (all in | the all in | whistle's gone | whistle's blown | hooter's gone)",
    "(starting now | i'm starting | i've started | new session | start now | we're off | we're under way | start the clock | started fishing | start of the session | start of session | start of the match)",
  ],
  ["start the session", "session start", "all in", "starting now"],
);

export const pause = act(
  "pause",
  [
    "[i'm | i'm just | going to | i'm going to | just] (taking | having | going for | take | have | time for | stopping for | stop for | going to have | going to take) (a break | a little break | a brew | a breather | my break | five | a bit | lunch | a bit of lunch | my lunch | some lunch | a cuppa | a cup of tea | a tea break | dinner | my dinner | a sandwich | a bite to eat | something to eat | ten minutes | a wee | a rest | a minute | a quick break | a short break | a coffee | a tea | tea | a bit of a break | a walk | a comfort break | a butty | a five minute break | a ten minute break)",
    `(pause | pausing | paused | hold | suspend) [${SESSION} | fishing | there | for lunch | for a bit | for a minute | for a brew | for a break | for dinner | for tea | for a while | for a moment | for my dinner | for my lunch | for my tea | for a sandwich | for something to eat | for some food | for a cuppa | for five minutes | everything | it | things]`,
    "(session | session's) (pause | paused | on hold)",
    "(break time | break | break for lunch | break for dinner | break for tea | break for a brew | quick break | short break | lunch break | tea break | on a break | i'm on a break | on my break | off for a break | off for a brew | on break | lunch time | brew time | time out | resting the swim | i'm having a break | off the peg | leaving the peg)",
    "[a] <duration> break",
    "(taking | having | going for | having a | stopping for | take) (<duration> | <number> | a <duration>) [break | off | out]",
  ],
  [
    "taking a break",
    "taking five",
    "pause the session",
    "session pause",
    "break time",
    "taking ten minutes out",
    "a five minute break",
  ],
);

export const resume = act(
  "resume",
  [
    "[i'm | we're | right | and i'm] (back on | back on it | back fishing | fishing again | back on the peg | back at it | back from my break | back from the break | back from lunch | back on my box | back on the box | back in action | starting again | start again | started again | back to it | back to fishing | back off my break | going again | off again | carrying on | back after a break | back after lunch | back to work | back at the peg) [again]",
    `(resume | resuming | continue | continuing | carry on | carry on with | restart | restarting | unpause | un pause | resumed | carrying on with) [${SESSION} | fishing | after the break]`,
    "(session | match) (resume | resumed | resumes | continues | back on | restarted)",
    "(break over | break's over | break finished | end of break | break's finished | lunch over | lunch is over | that's my break over | end of the break | break is over)",
  ],
  ["back on", "resume the session", "session resume", "break over"],
);

export const stop = act(
  "stop",
  [
    "[that's the | that's | it's the | it's | that's it] (all out | the all out | all out all out | whistle's gone all out)",
    `(stop | end | finish | close | stopping | ending | finishing | finished | ended | end of | that's the end of | close down | close out) (${SESSION} | fishing)`,
    "[that's] (session | session's | match | match is | match's | the match | the session | the match is | the session is) (over | stop | end | ended | finished | done | closed | complete)",
    "[i'm | just | right] (pack up | pack in | pack it in | packing up | packing up now | packed up | packing away | finished for the day | done for the day | calling it a day | call it a day | calling it | finishing there | finished fishing | stopping fishing | finishing up | packing in | wrapping up | packing it in | done fishing | finished now | off home) [now | for the day | for today]",
    "(that's me | i'm) (done | finished | all done | packed up) [for the day | for today | fishing]",
    "(time's up | that's time up | that's it for today | that's it for the day | that's my lot | that's your lot | end of play | end session)",
  ],
  [
    "all out",
    "stop the session",
    "session over",
    "packing up",
    "that's me done",
    "that's it for today",
  ],
);
