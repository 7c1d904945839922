import createModule from "soundswallower";
import { expect, test } from "vitest";
import { PhraseDecoder } from "../../../src/speech/offline/decoder.ts";
import type { DecoderModule } from "../../../src/speech/offline/decoder-module.ts";
import { LOOP_DICTIONARY, phoneLoop } from "../../../src/speech/offline/phone-loop.ts";
import { earsPack } from "../../tools/build/ears-pack.ts";

/** Words added on the bank bring a decoder each, and a drill brings nine. */
test("a decoder that is let go gives all its memory back", async () => {
  const module = (await createModule()) as DecoderModule;
  const model = earsPack();
  const sizes = Array.from({ length: 12 }, () => {
    const language = { dictionary: LOOP_DICTIONARY, fsg: phoneLoop() };
    const decoder = new PhraseDecoder({ module, model, ...language });
    decoder.start();
    decoder.feed(new Float32Array(800));
    decoder.finish();
    decoder.delete();
    return module.HEAPU8.length;
  });
  expect(sizes.at(-1)).toBe(sizes[2]);
});
