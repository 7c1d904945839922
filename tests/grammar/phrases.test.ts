import { describe, expect, it } from "vitest";
import { parseRightHandSide, rulesIn } from "../../grammar/jsgf/syntax.ts";
import { readItems, type SlotName } from "../../grammar/match/items.ts";
import { phrasePage } from "../../grammar/phrase-page.ts";
import { PHRASES } from "../../grammar/phrases/index.ts";
import { RULES } from "../../grammar/phrases/rules.ts";
import { createReader } from "../../grammar/read.ts";
import { tokenise } from "../../grammar/text/tokens.ts";
import { makeVocabulary } from "../../grammar/vocabulary/vocabulary.ts";
import { isAlike } from "./alike.ts";

/** The examples name one rig of the angler's own. */
const own = { rigs: [{ name: "dobber", spoken: ["dobber"] }] };
const reader = createReader({ own });
const vocabulary = makeVocabulary(own);

const SLOTS: readonly SlotName[] = [
  "weight",
  "length",
  "temperature",
  "duration",
  "number",
  "count",
  "ordinal",
  "species",
  "bait",
  "own-rig",
  "text",
];

describe.each(PHRASES.map((phrase) => [phrase.id, phrase] as const))("phrase %s", (_, phrase) => {
  it("states what its examples say it does", () => {
    for (const [said, statements] of Object.entries(phrase.examples)) {
      const reading = reader.read([said]);
      expect(isAlike(statements, reading.statements), `${said}: ${JSON.stringify(reading)}`).toBe(
        true,
      );
      expect(reading.verdict, said).not.toBe("ignore");
    }
  });

  it("has an example for each of its patterns", () => {
    const used = Object.keys(phrase.examples).flatMap((said) =>
      reader.read([said]).phrases.flatMap(({ id, pattern }) => (id === phrase.id ? [pattern] : [])),
    );
    const unused = phrase.patterns.filter((_, pattern) => !used.includes(pattern));
    expect(unused).toEqual([]);
  });

  it("fills every slot of its patterns in some example", () => {
    const said = new Set(Object.keys(phrase.examples).flatMap(slotsSaid));
    const named = new Set(phrase.patterns.flatMap(slotsOf));
    expect([...named].filter((slot) => !said.has(slot))).toEqual([]);
  });

  it("names no rule that is not defined", () => {
    const named = phrase.patterns.flatMap((pattern) => rulesIn(parseRightHandSide(pattern)));
    const unknown = named.filter((rule) => !(rule in RULES) && !SLOTS.includes(rule as SlotName));
    expect(unknown).toEqual([]);
  });
});

/** The slots a pattern may take, through the rules it names. */
const slotsOf = (pattern: string): SlotName[] =>
  rulesIn(parseRightHandSide(pattern)).flatMap((rule) =>
    rule in RULES ? slotsOf(RULES[rule] as string) : [rule as SlotName],
  );

const slotsSaid = (line: string): SlotName[] =>
  readItems(line, tokenise(line), vocabulary).flatMap((item) =>
    "slot" in item ? [item.slot] : [],
  );

describe("all phrases together", () => {
  it("have ids of their own", () => {
    const ids = PHRASES.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
  });

  it("share no example sentence", () => {
    const said = PHRASES.flatMap(({ examples }) => Object.keys(examples)).map((s) =>
      s.toLowerCase(),
    );
    expect(said.filter((sentence, i) => said.indexOf(sentence) !== i)).toEqual([]);
  });

  it("share no pattern", () => {
    const patterns = PHRASES.flatMap((phrase) => phrase.patterns);
    expect(new Set(patterns).size).toBe(patterns.length);
  });

  it("are all on the page of what can be said", () => {
    const shown = phrasePage().flatMap(({ phrases }) => phrases.map(({ id }) => id));
    expect(shown.toSorted()).toEqual(PHRASES.map(({ id }) => id).toSorted());
  });
});
