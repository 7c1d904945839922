/** Signs of fish that put nothing on the bank. */
import type { StatementOf } from "../statement.ts";
import { fixedPhrase, type Phrase } from "./phrase.ts";

const HAD =
  "first | definite | a definite | a | an | another | bit of a | a bit of a | got a | got another | had a | had another | just had a | there's a | there's another | that's a | that's another | that was a | that was another | i've had a | i've got a | getting a | having a | and a | one | one more | had one | few | a few | a couple of | couple of | some | getting | had some | had | proper | good | nice | decent | first | first";
const KIND =
  "little | small | tiny | slight | big | good | proper | decent | nice | quick | sharp | slow | half a | gentle | sudden";

const sign = (
  sort: StatementOf<"sign">["sort"],
  patterns: readonly string[],
  examples: readonly string[],
): Phrase => fixedPhrase(sort, { kind: "sign", sort }, patterns, examples);

export const bite = sign(
  "bite",
  [
    `[${HAD}] [${KIND}] (bite | bites | take) [on that | on that one | on the drop | straight away | on the float]`,
    "(float's | float has | the float has | float is | the float's | float | it's | the float | float is | that's) [just] (gone under | under | buried | gone down | went under | gone | been under | away | sailed away | dived | shot under | gone straight under | slid under | slid away)",
    "(fish on | hooked one | hooked up | i'm in one | hooked a fish | got a fish on | fish is on | fish hooked | hit one | connected)",
  ],
  ["bite", "got another little bite", "float's gone under", "fish on"],
);

export const missed = sign(
  "missed",
  [
    `[i've] (missed | missed out on) [${HAD} | it | him | that | that one | the] [${KIND}] [bite | one | it | him | that bite | that | that one | bites | the bite | on the strike] [again]`,
    "[i] (struck | strike | hit it | hit) [at that | at it | at one | at a bite] [and] (missed | missed it | missed him | nothing | nothing there | missed that)",
    "(bite missed | bite missed again | one missed | another missed | another one missed | missed on the strike | struck too soon | struck too early | struck too late | struck at nothing | struck into nothing | struck nothing there)",
  ],
  ["missed one", "struck and missed", "bite missed"],
);

export const knock = sign(
  "knock",
  [
    `[${HAD}] [${KIND}] [${KIND}] (knock | knocks | tap | taps | twitch | twitches | pluck | plucks | nibble | nibbles | dip | dips | dink | tremble | indication | indications | touch | flicker | lift) [on the float | on the rig | on it | on that | on the bait | there again]`,
    "[the] (float's | float | it's | float just | something's) [just] (dipped | knocked | twitched | moved | trembled | bobbed | wobbled | dipping | twitching | bobbing | moving | dotted | knocking it | plucking at it | knocking at it | lifted)",
  ],
  ["little knock", "float's dipped"],
);

export const liner = sign(
  "liner",
  [
    `[just | another | got | had] [${HAD}] [${KIND}] [of a] (liner | liners | line bite | line bites | liner bite | false bite) [that | that one | there]`,
    "(fish | something | one) (brushed | hit | swam into | caught | bumped) the line",
  ],
  ["liner", "fish brushed the line"],
);
