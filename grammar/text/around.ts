/**
 * Words people put before and after a statement that change nothing of it: "I've", "let's", "this
 * time". Unlike fillers they count only right beside a phrase that was found.
 */
import { plainWord } from "../jsgf/flatten.ts";
import { contractWords } from "./contraction.ts";
import { isFiller } from "./fillers.ts";

const withoutFillers = (words: readonly string[]): string[] =>
  contractWords(words).filter((word) => !isFiller(word));

const rows = (list: string): ReadonlySet<string> =>
  new Set(list.split(" | ").map((row) => withoutFillers(row.split(" ").map(plainWord)).join(" ")));

const BEFORE = rows(
  "i | i'm | i've | i'll | we | we're | we've | i'd | let's | let me | log | log a | log that | log this | record | record a | put down | add | add a | got him | got it | got her | he's in | in he comes | in it comes | sorry | no sorry | oops | whoops | wait | no | oh no | hello | hey | the | it's | that's | going to | i'm going to | we're going to | gonna | i'm gonna | i'm gonna go | i think i'll | i think i've | i think | think i'll | i'll go | i'll try | i've gone | i've just gone | well i've | i've now | try and | time to | time for | i'm just | i've only | finally | at last | bonus | brilliant | lovely | nice | lovely job | good | great | get in | come on | so i'm | so i've | because | cos | but | and i'm | and i've | and i | damn | damn it | dammit | oh dear | bugger | sod it | here we go | here he comes | there we go | off we go | another drop | next up | next one | next | first one | first of the day | first fish of the day | first fish | update | new one | had to | decided to | we go | put me down for | put me down for a | put down for | got him in | got it in | safe in | best of the day | biggest of the day | best so far | biggest so far | my biggest | put another section on | weighing in at | weighs in at | weighed him at | weighed it at | weighed at | measured him at | measured at | measured this one | measured | this one is | count me | can you | could you | can i have | the swim | that's the swim | we've got | swim | there goes | there's the | i'll give | give me | give us | i meant | scales say | the scales say | scales said | so that's | so it's | safely | plumbed up | gone shallow | going shallow | gone deep | going deep | that's it | weighed this | weighed this one | dropped a section | dropped a section off | added a section | landed him | took a | took | there was a | there was | man | oh man | measured it again | that's me with | that's me | did not expect that | i would put this | slid over the net | slipped over the net | put me down | put me down a | blast | there you go | that's that | this | take us | take me | aye up | got him in the net | ey up | hey up | ay up | now then | righto | aye that's | i've only got | only got | managed | managed a | he's in that's | ooh that's | then | and then | had a | just had | just had a | i've just had | i'm having | having | these are | weigh | those are | these | can you tell me | tell me | could you tell me | please tell me | i want to know | do you know | any idea | remind me | can you say | what about | right so | i was | it was a | using",
);

const AFTER = rows(
  "this time | that time | today | at last | finally | i think | i reckon | i believe | for me | on that | on that one | on this one | on that drop | straight away | first drop | first put in | first thing | as well | too | already | again | for a change | this morning | this afternoon | thank you | thanks | you beauty | get in | lovely | brilliant | great | nice | good | nice one | lovely fish | nice fish | good fish | i'd say | to be fair | of course | for now | for a bit | for a while | for a change | to start | to start with | to begin with | from now | from here | from here on | from now on | an all | and all that | same as before | same again | same as last time | what a fish | what a beauty | is that | that | mind | mind you | as usual | no idea of the weight | no idea what weight | don't know the weight | not weighed | didn't weigh it | haven't weighed it | they're queuing up | they're on it now | dunno what it is | don't know what it is | not sure what | one after the other | on the unhooking mat | on the mat | safe and sound | landed it | landed him | got him | got it | got him in | nothing special | my biggest today | my biggest so far | my best today | biggest today | biggest so far | best of the day | best today | than i was | than before | than it was | than last time | off the last one | in one go | for the last hour | of all things | would you believe it | to start it | to hand | on the trot | duck | in she goes | in he goes | even | by | in the reeds | in it | by there | see | sharp that | will you | my mistake | while i was playing | taken | has been landed | have gone in the net | have gone into the net | gone into the net | no weight taken | is gone | came in | of it | that time round | going long | yes | cheers | believe it or not | surprise that | surprise surprise | after | at this pace | then | that now | up to now | as we speak | no problem | easy | for sure | with the rig | with the same rig | on the rig | on the same rig | with this rig | for the net | that's it for the net | got up | go | a go | on me | the clock | did that | that did | as it happens | at the minute | damn | damn it | dammit | unfortunately | sadly | shame | gutted | so there | if anything | and quite strong | quite strong | i guess | on the next one | same again | at the moment | on the way up | on the drop | on the deck | on the bottom | after that | before that | once more | from now on | the whole time | all day | on this line | over there | in this wind | with that | with it | by the way | at long last | happy with that | i'll take that | happy days | he was a good one | and all | that is | straight off | nothing on it | didn't see it | on the strike | in the end | would you believe | weight wise | if you please | by the look of it | halfway in | all told | on my own | i'm afraid | do you think | by hand | in the corner | in the margin | in the margins | down the edge | on the long pole | again today",
);

const LONGEST = Math.max(...[...BEFORE, ...AFTER].map((row) => row.split(" ").length));

export interface Aside {
  from: number;
  to: number;
}

/** Every stretch of the row that may stand before or after a phrase. */
export function findAsides(row: readonly string[]): Aside[] {
  return row.flatMap((_, from) =>
    Array.from({ length: Math.min(LONGEST, row.length - from) }, (_, k) => from + k + 1)
      .filter((to) => isAside(row.slice(from, to).join(" ")))
      .map((to) => ({ from, to })),
  );
}

const isAside = (words: string): boolean => BEFORE.has(words) || AFTER.has(words);

/**
 * Whether a gap may be passed over whole: first what belongs to the phrase before it, then what
 * belongs to the one after it.
 */
export function isPassedOver(gap: readonly string[], isAfter: boolean, isBefore: boolean): boolean {
  if (gap.length === 0) return true;
  for (let length = Math.min(LONGEST, gap.length); length > 0; length -= 1) {
    const words = gap.slice(0, length).join(" ");
    const rest = gap.slice(length);
    if (isAfter && AFTER.has(words) && isPassedOver(rest, true, isBefore)) return true;
    if (isBefore && BEFORE.has(words) && isPassedOver(rest, false, true)) return true;
  }
  return false;
}
