import { describe, expect, it } from "vitest";
import { parseDefinition, printDefinition } from "../../../src/speech/offline/model/definition.ts";
import { keepSenones } from "../../../src/speech/offline/model/mixtures.ts";
import { nearest } from "../../../src/speech/offline/model/nearest.ts";
import { trimModel } from "../../../src/speech/offline/model/trim.ts";
import { wordsOfGrammar } from "../../../src/speech/offline/model/words.ts";
import { wholeModel } from "../../tools/build/ears-pack.ts";

const model = wholeModel();
const whole = parseDefinition(model.mdef);
const numberOf = (name: string) => whole.phones.findIndex((phone) => phone.name === name);

describe("the model's list of phones", () => {
  it("holds what the package's own head counts", () => {
    expect(whole.phones).toHaveLength(42);
    expect(whole.phones.length + whole.triphones.length).toBe(137_095);
    expect([whole.senones, whole.plainSenones, whole.sequences.length]).toEqual([
      5126, 126, 28_458,
    ]);
    expect(whole.phones.filter(({ isFiller }) => isFiller).map(({ name }) => name)).toContain(
      "SIL",
    );
  });

  it("is read as printed", () => {
    const few = { ...whole, triphones: whole.triphones.filter((_, index) => index % 97 === 0) };
    expect(parseDefinition(printDefinition(few))).toEqual(few);
  });
});

describe("a model cut down to some words", () => {
  const trimmed = trimModel(model, [
    ["net", "N EH T"],
    ["a", "AH"],
  ]);
  const definition = parseDefinition(trimmed.mdef);

  it("is much smaller", () => {
    expect(trimmed.mdef.length).toBeLessThan(model.mdef.length / 50);
    expect(trimmed.sendump.length).toBeLessThan(model.sendump.length / 5);
  });

  it("gives each sound of theirs the same weights", () => {
    const sound = {
      position: "inside",
      base: numberOf("EH"),
      left: numberOf("N"),
      right: numberOf("T"),
    } as const;
    const weights = ({ sendump }: typeof model, { sequences, senones }: typeof whole, at: number) =>
      sequences[at]?.map((senone) => {
        const from = sendump.length - 3 * 128 * senones;
        return Array.from({ length: 3 * 128 }, (_, row) => sendump[from + row * senones + senone]);
      });
    const [before, after] = [nearest(whole)(sound), nearest(definition)(sound)];
    expect(after).toBeDefined();
    expect(weights(trimmed, definition, after?.sequence as number)).toEqual(
      weights(model, whole, before?.sequence as number),
    );
  });

  it("keeps every phone out of context", () => {
    expect(definition.phones.map(({ name }) => name)).toEqual(whole.phones.map(({ name }) => name));
    expect(definition.plainSenones).toBe(126);
  });
});

describe("the mixtures' weights", () => {
  it("are refused where they fill no rows", () => {
    expect(() =>
      keepSenones(new Uint8Array([0, 0, 0, 0, 1, 0, 0, 0, 3, 0, 0, 0, 9]), [0]),
    ).toThrow();
  });
});

describe("the words of a grammar", () => {
  const grammar = (word: string) =>
    `FSG_BEGIN x\nNUM_STATES 2\nSTART_STATE 0\nFINAL_STATE 1\nTRANSITION 0 1 1 ${word}\nFSG_END\n`;

  it("come from the trade's list first", () => {
    const dictionary = new Map([["chub", ["HH AH B"]]]);
    expect(wordsOfGrammar(grammar("chub"), dictionary)).toEqual([["chub", "CH AH B"]]);
  });

  it("must all be sayable, places for own words aside", () => {
    expect(() => wordsOfGrammar(grammar("qwrtz"), new Map())).toThrow(/qwrtz/);
    expect(wordsOfGrammar(grammar("own_rig"), new Map())).toEqual([]);
  });
});
