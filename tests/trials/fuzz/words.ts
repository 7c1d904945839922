/** Vocabularies that strangers send: any name may be read, said, told to the ears, and read again. */
import { expectedPhrases } from "../../../grammar/expected.ts";
import { namesByPlace } from "../../../grammar/fsg/own-words.ts";
import { createReader } from "../../../grammar/read.ts";
import { say } from "../../../grammar/say.ts";
import type { LogEvent, OwnWord } from "../../../src/log/event.ts";
import { ownWords } from "../../../src/scribe/own-words.ts";
import { languageOf } from "../../../src/speech/offline/ears-language.ts";
import { withOwnWords } from "../../../src/speech/offline/own-words.ts";
import { INJECTIONS } from "../../share/days.ts";
import type { Damage } from "./inputs.ts";
import type { Random } from "./mutate.ts";

/** Words that mean something to a decoder's formats, a grammar or every object. */
export const SIGNS: readonly string[] = [
  ...["<s>", "</s>", "<sil>", "[noise]", "carp(2)", "#", "F1 (small)", "()", "'", "-", "_", " "],
  ...["own_species", "FSG_END", "TRANSITION 0 1 1", "phaa", "aeiou".repeat(16), "s".repeat(80)],
  ...["constructor two pounds", "valueOf", "hasOwnProperty", "one", "fish", "scratch that"],
];
const STRANGE = [...INJECTIONS, ...SIGNS];

/** A grammar as it is built, but for its size. */
const GRAMMAR = [
  ...["FSG_BEGIN trial", "NUM_STATES 2", "START_STATE 0", "FINAL_STATE 1"],
  ...["own_species", "own_bait", "own_rig"].map((place) => `TRANSITION 0 1 0.3 ${place}`),
  "FSG_END",
].join("\n");
/** What the decoder takes for a word: no sign of its own formats. */
const WORD = /^[\p{L}\p{M}\p{N}'’-]+$/u;

/** Whether it was taken, which it always is; throws where anything went wrong. */
export async function tryWords(
  _events: readonly LogEvent[],
  damage: Damage,
  random: Random,
): Promise<boolean> {
  const any = () => damage(STRANGE[Math.floor(random() * STRANGE.length)] ?? "").slice(0, 80);
  const word = (): OwnWord => ({ name: any() || "x", spoken: [any() || "y"], soundsLike: any() });
  const plan = {
    ownSpecies: [word(), word()],
    ownBaits: [word()],
    ownRigs: [word()],
    rigs: [{ name: any() || "z", shots: [] }],
  };
  const own = ownWords(plan);
  const reader = createReader({ own, ...(random() < 0.2 && { callWord: any() }) });
  for (const phrase of expectedPhrases(own).slice(0, 8)) {
    for (const line of [phrase, `${phrase} two pounds`, `on the ${phrase}`]) {
      for (const statement of reader.read([line, any()]).possible) reader.read([say(statement)]);
    }
  }
  const names = namesByPlace(own);
  const known = await withOwnWords(new Map(), names, async () => "carp K AA R P\nfish F IH SH");
  const { dictionary } = languageOf(GRAMMAR, known, names);
  const broken = dictionary.find(([one]) => !WORD.test(one));
  if (broken) throw new Error(`The decoder would be given ${JSON.stringify(broken)}.`);
  return true;
}
