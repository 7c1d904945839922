import { describe, expect, it } from "vitest";
import { spell } from "../../../src/speech/offline/letters.ts";
import { withOwnWords } from "../../../src/speech/offline/own-words.ts";
import { parseDictionary, pronounce } from "../../../src/speech/offline/pronounce.ts";

const TEXT =
  ";;; a remark\nkeep K IY P\nnet N EH T\nrig R IH G\nlash L AE SH\ncarp K AA R P\na AH\na(2) EY\n";
const dictionary = parseDictionary(TEXT);

describe("pronunciations", () => {
  it.each([
    ["a", ["AH", "EY"]],
    ["keepnet", ["K IY P N EH T"]],
    ["keepnets", ["K IY P N EH T S"]],
    ["rig's", ["R IH G Z"]],
    ["lash's", ["L AE SH IH Z"]],
    ["qwrtz", []],
  ])("%s is said %s", (word, ways) => {
    expect(pronounce(word, dictionary)).toEqual(ways);
  });
});

describe("letters", () => {
  it.each([
    ["bleak", "B L IY K"],
    ["wels", "W EH L S"],
    ["ruffe", "R AH F"],
    ["bream", "B R IY M"],
    ["dace", "D EY S"],
    ["tench", "T EH N CH"],
    ["sprat", "S P R AE T"],
    ["celtic", "S EH L T IH K"],
    ["sponge", "S P AA N JH"],
    ["Dibbly-Bob", "D IH B L IH B AA B"],
    ["10", ""],
  ])("of %s are said %s", (word, phones) => {
    expect(spell(word)).toBe(phones);
  });
});

describe("the angler's own words", () => {
  const known = parseDictionary("net N EH T\nzander Z AE N D ER\n");
  const rigs = (...names: { spoken: string; soundsLike?: string }[]) => ({ own_rig: names });
  const all = async () => TEXT;

  it("need no dictionary where the grammar has them", async () => {
    const never = () => Promise.reject(new Error("asked"));
    expect(await withOwnWords(known, rigs({ spoken: "zander net" }), never)).toBe(known);
  });

  it("are looked up, else spelt", async () => {
    const words = await withOwnWords(known, rigs({ spoken: "Carp wels" }), all);
    expect(words.get("carp")).toEqual(["K AA R P"]);
    expect(words.get("wels")).toEqual(["W EH L S"]);
    expect(words.get("net")).toEqual(["N EH T"]);
  });

  it("sound as the angler tells, and as they are looked up", async () => {
    const words = await withOwnWords(
      known,
      rigs({ spoken: "lash", soundsLike: "rig net" }, { spoken: "old jolt", soundsLike: "a carp" }),
      all,
    );
    expect(words.get("lash")).toEqual(["R IH G N EH T", "L AE SH"]);
    expect(words.get("old")?.[0]).toBe("AH");
    expect(words.get("jolt")).toEqual(["K AA R P"]);
  });

  it("of which nothing can be said stay out", async () => {
    expect((await withOwnWords(known, rigs({ spoken: "10" }), all)).get("10")).toEqual([]);
  });
});
