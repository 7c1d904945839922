import { describe, expect, it } from "vitest";
import { withAccent } from "../../../src/speech/offline/accents.ts";
import { parseDictionary } from "../../../src/speech/offline/pronounce.ts";

const dictionary = parseDictionary(
  [
    "carp K AA R P",
    "bird B ER D",
    "deeper D IY P ER",
    "clear K L IH R",
    "roach R OW CH",
    "half HH AE F",
    "lost L AA S T",
    "lunch L AH N CH",
    "hour AW ER",
  ].join("\n"),
);

describe("an accent", () => {
  it.each([
    ["dictionary", "carp", ["K AA R P"]],
    ["southern", "carp", ["K AA R P", "K AA P"]],
    ["southern", "bird", ["B ER D"]],
    ["southern", "deeper", ["D IY P ER", "D IY P AH"]],
    ["southern", "clear", ["K L IH R", "K L IH AH"]],
    ["southern", "roach", ["R OW CH"]],
    ["southern", "half", ["HH AE F", "HH AA F"]],
    ["southern", "lost", ["L AA S T", "L AO S T"]],
    ["southern", "lunch", ["L AH N CH"]],
    ["northern", "lunch", ["L AH N CH", "L UH N CH"]],
    ["northern", "half", ["HH AE F", "AE F"]],
  ] as const)("%s says %s %s", (accent, word, ways) => {
    expect(withAccent(dictionary, accent).get(word)).toEqual(ways);
  });
});
