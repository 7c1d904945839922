/** What the ears inside the app are made of, put together from the packages and the grammar. */
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { earsGrammar } from "../../../grammar/fsg/ears.ts";
import { ACCENTS, withAccent } from "../../../src/speech/offline/accents.ts";
import type { Pronounced } from "../../../src/speech/offline/decoder.ts";
import { MODEL_PARTS, type ModelFiles } from "../../../src/speech/offline/decoder-module.ts";
import type { EarsFile } from "../../../src/speech/offline/ears-files.ts";
import { printFsg } from "../../../src/speech/offline/fsg.ts";
import { trimModel } from "../../../src/speech/offline/model/trim.ts";
import { printWords, wordsOfGrammar } from "../../../src/speech/offline/model/words.ts";
import { LOOP_DICTIONARY } from "../../../src/speech/offline/phone-loop.ts";
import { type Dictionary, parseDictionary } from "../../../src/speech/offline/pronounce.ts";

const require = createRequire(import.meta.url);
const DECODER = dirname(require.resolve("soundswallower"));
const MODEL = join(DECODER, "model/en-us");
const SUPPRESSOR = dirname(require.resolve("@jitsi/rnnoise-wasm"));

const encode = (text: string): Uint8Array => new TextEncoder().encode(text);

/** The model as its package holds it. */
export function wholeModel(): ModelFiles {
  const parts = MODEL_PARTS.map((part) => [part, readFileSync(join(MODEL, part))] as const);
  return Object.fromEntries(parts) as unknown as ModelFiles;
}

/** Every file by its name, as the worker reads it. */
export function earsPack(): Record<EarsFile, Uint8Array> {
  const grammar = printFsg(earsGrammar());
  const dictionary = readFileSync(join(MODEL, "dict.txt"));
  const words = wordsOfGrammar(grammar, parseDictionary(dictionary.toString("utf8")));
  const spoken = parseDictionary(printWords(words));
  const ways = ACCENTS.flatMap((accent) => pronounced(withAccent(spoken, accent)));
  return {
    ...trimModel(wholeModel(), [...ways, ...LOOP_DICTIONARY]),
    "words.txt": encode(printWords(words)),
    "grammar.fsg": encode(grammar),
    "decoder.wasm": readFileSync(join(DECODER, "soundswallower.web.wasm")),
    "suppressor.wasm": readFileSync(join(SUPPRESSOR, "dist/rnnoise.wasm")),
    "dictionary.txt": dictionary,
  };
}

const pronounced = (dictionary: Dictionary): Pronounced[] =>
  Array.from(dictionary).flatMap(([word, ways]) => ways.map((way): Pronounced => [word, way]));
