/**
 * Words people put before and after a statement that change nothing of it: "I've", "let's", "this
 * time". Unlike fillers they count only right beside a phrase that was found.
 */
import { plainWord } from "../jsgf/flatten.ts";

const rows = (list: string): ReadonlySet<string> =>
  new Set(list.split(" | ").map((row) => plainWord(row)));

const BEFORE = rows(
  "i | i'm | i've | i'll | we | we're | we've | i'd | let's | let me | log | log a | log that | log this | record | record a | put down | add | add a | got him | got it | got her | he's in | in he comes | in it comes | sorry | no sorry | oops | whoops | wait | no | oh no | hello | hey | the | it's | that's | going to | i'm going to | we're going to | gonna | i'm gonna | i'm gonna go | i think i'll | i think i've | i think | think i'll | i'll go | i'll try | i've gone | i've just gone | well i've | i've now | try and | time to | time for | i'm just | i've only | finally | at last | bonus | brilliant | lovely | nice | lovely job | good | great | get in | come on | so i'm | so i've | because | cos | but | and i'm | and i've | and i | damn | damn it | dammit | oh dear | bugger | sod it | here we go | here he comes | there we go | there he is | there it is | off we go | another drop | next up | next one | next | first one | first of the day | first fish of the day | first fish | update | new one | had to | decided to | we go | these are | those are | these | can you tell me | tell me | could you tell me | please tell me | i want to know | do you know | any idea | remind me | can you say | what about | right so | i was | it was a | using | it | that | and that",
);

const AFTER = rows(
  "this time | that time | today | at last | finally | i think | i reckon | i believe | for me | on that | on that one | on this one | on that drop | straight away | first drop | first put in | first thing | as well | too | already | again | for a change | this morning | this afternoon | thank you | thanks | you beauty | get in | lovely | brilliant | great | nice | good | nice one | lovely fish | nice fish | good fish | i'd say | to be fair | of course | for now | instead | damn | damn it | dammit | unfortunately | sadly | shame | gutted | so there | if anything | and quite strong | quite strong | i guess | on the next one | same again | at the moment | on the way up | on the drop | on the deck | on the bottom | after that | before that | once more | from now on | the whole time | all day | on this line | over there | in this wind | with that | with it | by the way | at long last | happy with that | i'll take that | happy days | he was a good one | and all | that is | straight off | nothing on it | didn't see it | on the strike | in the end | would you believe | weight wise | if you please | by the look of it | halfway in | all told | on my own | i'm afraid | do you think | by hand | in the corner | in the margin | in the margins | down the edge | on the long pole | again today",
);

/** Whether these words right before a phrase may be passed over. */
export const mayStandBefore = (words: readonly string[]): boolean => BEFORE.has(words.join(" "));

/** Whether these words right after a phrase may be passed over. */
export const mayStandAfter = (words: readonly string[]): boolean => AFTER.has(words.join(" "));
