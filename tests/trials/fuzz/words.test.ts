import { expect, test } from "vitest";
import { namesByPlace } from "../../../grammar/fsg/own-words.ts";
import { createReader } from "../../../grammar/read.ts";
import { INJECTIONS } from "../../share/days.ts";
import { createNodeEar } from "../../tools/node-ear.ts";
import { SIGNS } from "./words.ts";

const STRANGE = [...INJECTIONS, ...SIGNS];
const words = STRANGE.map((name) => ({ name, spoken: [name], soundsLike: name }));
const own = { species: words, baits: words, rigs: words };

test("any words may be read, with or without being the angler's own", () => {
  for (const reader of [createReader(), createReader({ own })]) {
    for (const text of STRANGE) {
      expect(reader.read([text, `${text} two pounds`]).heard).toBeTypeOf("string");
    }
  }
});

test("the ears inside the app can be told any words, and hear on", async () => {
  const ear = await createNodeEar(namesByPlace(own));
  const silence = { samples: new Float32Array(48_000), rateHz: 48_000 };
  expect(ear.listen(silence)).toEqual([]);
});

/** Processor time, of which a loaded machine takes none away. */
const MOST_MS = 1000;

test("thousands of the angler's own names that begin alike are soon learnt", () => {
  const species = Array.from({ length: 10_000 }, (_, n) => ({ name: `quillet ${n}`, spoken: [] }));
  const before = process.cpuUsage();
  createReader({ own: { species } });
  const { user, system } = process.cpuUsage(before);
  expect((user + system) / 1000).toBeLessThan(MOST_MS);
});
