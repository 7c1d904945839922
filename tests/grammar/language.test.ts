import { expect, test } from "vitest";
import { Language } from "../../grammar/language.ts";
import { createReader } from "../../grammar/read.ts";

const LINE = "F1 two pounds eight, feeding";

test("a language made ready piece by piece reads as one made ready at once", () => {
  const inPieces = new Language();
  let pieces = 1;
  while (inPieces.prepare()) pieces += 1;
  expect(pieces).toBeGreaterThan(100);
  const half = new Language();
  for (let n = 0; n < pieces / 2; n += 1) half.prepare();
  const reading = createReader().read([LINE]);
  expect(reading.verdict).toBe("log");
  for (const language of [inPieces, half])
    expect(createReader({}, language).read([LINE])).toEqual(reading);
});

test("one language serves readers that know other names", () => {
  const language = new Language();
  const own = { species: [{ name: "sunbleak", spoken: ["sunbleak"] }] };
  const [one, other] = [createReader({}, language), createReader({ own }, language)];
  expect(one.read(["sunbleak two ounces"]).statements).not.toEqual(
    other.read(["sunbleak two ounces"]).statements,
  );
  expect(one.read(["roach two ounces"])).toEqual(other.read(["roach two ounces"]));
});
