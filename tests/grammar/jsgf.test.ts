import { describe, expect, it } from "vitest";
import { wholeGrammar } from "../../grammar/grammar.ts";
import { parseGrammar, printGrammar } from "../../grammar/jsgf/grammar-text.ts";
import { sample, seededRandom } from "../../grammar/jsgf/sample.ts";
import {
  JsgfError,
  type Node,
  parseRightHandSide,
  printRightHandSide,
  rulesIn,
} from "../../grammar/jsgf/syntax.ts";
import { PHRASES } from "../../grammar/phrases/index.ts";
import { createReader } from "../../grammar/read.ts";

const grammar = wholeGrammar();

describe("the notation", () => {
  it.each([
    "a b",
    "a | b c",
    "[a] (b | <c>)+ d*",
    "a [b [c | d]] <e>",
    "/3/ a | /0.5/ b c | /1/ d",
  ])("%s is printed as read", (source) => {
    expect(printRightHandSide(parseRightHandSide(source))).toBe(source);
  });

  it.each(["", "(a", "a )", "a | ", "[a", "* a", "a; b", "<a"])("%s is refused", (source) => {
    expect(() => parseRightHandSide(source)).toThrow(JsgfError);
  });
});

describe("the whole grammar", () => {
  it("is the same after being printed and parsed", () => {
    const parsed = parseGrammar(printGrammar(grammar));
    expect(parsed.publicRule).toBe(grammar.publicRule);
    expect([...parsed.rules.keys()]).toEqual([...grammar.rules.keys()]);
    for (const [name, node] of grammar.rules) {
      expect(printRightHandSide(parsed.rules.get(name) as Node), name).toBe(
        printRightHandSide(node),
      );
    }
  });

  it("defines every rule it names", () => {
    const named = [...grammar.rules.values()].flatMap(rulesIn);
    expect(named.filter((name) => name !== "VOID" && !grammar.rules.has(name))).toEqual([]);
  });

  it("takes in the angler's own words", () => {
    const own = wholeGrammar({ rigs: [{ name: "dibbler", spoken: ["dibbler"] }] });
    expect(printRightHandSide(own.rules.get("own-rig") as Node)).toBe("dibbler");
  });
});

describe("sampled sentences", () => {
  it("are drawn as often as their weights say", () => {
    const root = parseRightHandSide("/3/ a | b");
    const random = seededRandom(1);
    const drawn = Array.from({ length: 1000 }, () => sample(root, grammar, random));
    const share = drawn.filter((word) => word === "a").length / 1000;
    expect(Math.abs(share - 0.75)).toBeLessThan(0.04);
  });

  it("are the same for the same seed and differ with another", () => {
    const root = grammar.rules.get("utterance") as Node;
    const draw = (seed: number) => {
      const random = seededRandom(seed);
      return Array.from({ length: 20 }, () => sample(root, grammar, random));
    };
    expect(draw(1)).toEqual(draw(1));
    expect(draw(1)).not.toEqual(draw(2));
  });

  it("avoid what can't be spoken", () => {
    expect(sample(parseRightHandSide("<VOID> | a"), grammar, seededRandom(1))).toBe("a");
    expect(sample(parseRightHandSide("<VOID>"), grammar, seededRandom(1))).toBeUndefined();
  });

  /**
   * Patterns allow more than people say, and some random sentences mean another phrase as well or
   * better; so a share is asked for, not all.
   */
  it("are understood, nineteen of twenty as the phrase they were drawn from", () => {
    const reader = createReader();
    const random = seededRandom(11);
    const drawn = PHRASES.filter(({ id }) => !id.startsWith("correct")).flatMap(({ id }) =>
      Array.from({ length: 40 }, () => {
        const sentence = sample(grammar.rules.get(id) as Node, grammar, random) as string;
        const { verdict, phrases } = reader.read([sentence]);
        return { id, isRead: verdict !== "ignore" && phrases.some((phrase) => phrase.id === id) };
      }),
    );
    expect(drawn.filter(({ isRead }) => isRead).length / drawn.length).toBeGreaterThan(0.95);
  });
});
