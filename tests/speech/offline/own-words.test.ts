import { join } from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { namesByPlace } from "../../../grammar/fsg/own-words.ts";
import { createReader } from "../../../grammar/read.ts";
import { createNodeEar, type NodeEar } from "../../tools/node-ear.ts";
import { readWav } from "../../tools/wav.ts";

/** Speech by the voices `slt` and `awb` of Debian's `flite` 2.2, brought to 8 kHz. */
const FOLDER = "tests/speech/offline/own-words";

const named = (name: string, soundsLike?: string) => ({
  name,
  spoken: [],
  ...(soundsLike !== undefined && { soundsLike }),
});
const own = {
  // From the dictionary, from two words of it, from letters, and as it is told.
  species: [named("grayling"), named("sunbleak"), named("spondle"), named("beluga", "sturgeon")],
  baits: [named("prawn")],
  rigs: [named("wonder wand")],
};
const reader = createReader({ own });
const states = (text: string) => reader.read([text]).statements;

describe("the ears inside the app, of words that the angler added,", () => {
  let ear: NodeEar;

  beforeAll(async () => {
    ear = await createNodeEar(namesByPlace(own));
  }, 60_000);

  it.each([
    ["grayling two pounds", "grayling two pounds"],
    ["sunbleak two pounds", "sunbleak two pounds"],
    ["spondle two pounds", "spondle two pounds"],
    ["on the prawn", "on the prawn"],
    ["on the wonder wand", "on the wonder wand"],
    ["lost a sturgeon", "lost a beluga"],
  ])("hear %s as %s", (said, meant) => {
    const heard = ear.listen(readWav(join(FOLDER, `${said.replaceAll(" ", "-")}.wav`)));
    expect(heard.flatMap(({ text }) => states(text))).toEqual(states(meant));
    expect(states(meant)).toHaveLength(1);
  });
});
