/** A nudge at set times. */

import type { Statement } from "../statement.ts";
import { given, type Phrase, type Said, sure } from "./phrase.ts";

const NUDGE =
  "give us a reminder | give us a prompt | give me a shout out | can you nudge me | can you remind me | give us a nudge | give us a shout | nudge us | nudge me | remind me | prompt me | give me a nudge | a nudge | nudge | set a nudge | set a reminder | reminder | tell me | give me a reminder | give me a shout | shout | shout me | ping me | warn me | set a timer | a reminder | buzz me | beep me | beep | alert me | set me a reminder | remind us | let me know | give me a prompt | put a nudge on | set a nudge for | set reminder | nudges | reminders | poke me | set nudge";

const what = (said: Said): string | undefined =>
  said.first("text") ?? (said.says("feed", "feeding") ? "feed" : undefined);

const remind = (everyMs: number, about?: string): Statement => ({
  kind: "remind",
  everyMs,
  ...given({ about }),
});

const MINUTE_MS = 60_000;

export const nudge: Phrase = {
  id: "nudge",
  patterns: [
    `(${NUDGE}) [for] every <duration> [to <text> | about <text>]`,
    `(${NUDGE}) [to <text> | about <text>] every <duration>`,
    `(${NUDGE}) [for] every <number> [to <text> | about <text>]`,
    `every <duration> (${NUDGE}) [to <text> | about <text>]`,
    `(${NUDGE}) once <duration>`,
    "[set] [a | the | my] (feed | feeding) (reminder | nudge | prompt | alarm | timer) [for] every <duration>",
  ],
  examples: {
    "nudge me every three minutes": [{ kind: "remind", everyMs: 3 * MINUTE_MS }],
    "remind me to feed every five minutes": [
      { kind: "remind", everyMs: 5 * MINUTE_MS, about: "feed" },
    ],
    "every ten minutes remind me to check the depth": [
      { kind: "remind", everyMs: 10 * MINUTE_MS, about: "check the depth" },
    ],
    "nudge me every ten": [{ kind: "remind", everyMs: 10 * MINUTE_MS }],
    "nudge me once a minute": [{ kind: "remind", everyMs: MINUTE_MS }],
    "feed reminder every three minutes": [
      { kind: "remind", everyMs: 3 * MINUTE_MS, about: "feed" },
    ],
  },
  states: (said) =>
    sure(remind(said.first("duration") ?? (said.first("number") ?? 0) * MINUTE_MS, what(said))),
};

const NUDGES =
  "nudge | nudges | nudging | nudging me | the nudge | the nudges | reminder | reminders | the reminder | the reminders | reminding me | reminding | my reminder | my reminders | prompts | prompting me | the prompts | the timer | the prompt | that reminder | that nudge | the beeping | beeping";

export const noNudge: Phrase = {
  id: "no-nudge",
  patterns: [
    `(stop | no more | turn off | cancel | switch off | end | quit | clear | kill | knock off | drop | don't keep | enough of | shut off | no need for | lose | stop all | remove | delete) (${NUDGES})`,
    `(${NUDGES}) (off | stop | over | cancelled)`,
    `turn (${NUDGES}) off`,
    "(don't nudge me | don't remind me | stop with the nudges | no reminders | no nudges | you can stop nudging me | you can stop nudging | you can stop reminding me | quit nudging me) [any more | anymore | now]",
  ],
  examples: {
    "stop nudging": [{ kind: "remind", everyMs: 0 }],
    "nudges off": [{ kind: "remind", everyMs: 0 }],
    "turn the nudges off": [{ kind: "remind", everyMs: 0 }],
    "don't nudge me": [{ kind: "remind", everyMs: 0 }],
  },
  states: () => sure(remind(0)),
};
