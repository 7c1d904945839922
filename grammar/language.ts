/** All phrases' patterns, made ready to be matched: alike for every reader, whatever names it knows. */
import { parseRightHandSide } from "./jsgf/syntax.ts";
import { type Entry, entriesOf, type Matcher, matcherOf } from "./match/compromise.ts";
import type { PatternEntry } from "./match/cover.ts";
import { PHRASES } from "./phrases/index.ts";
import { RULES } from "./phrases/rules.ts";

/** That takes a tenth of a second on a quick machine, so it can be done piece by piece. */
export class Language {
  readonly patterns: readonly PatternEntry[] = PHRASES.flatMap((phrase, rank) =>
    phrase.patterns.map((_, pattern) => ({ phrase, pattern, rank })),
  );
  readonly #inline = new Map(
    Object.entries(RULES).map(([name, source]) => [name, parseRightHandSide(source)]),
  );
  readonly #entries: Entry[] = [];
  #done = 0;
  #matcher: Matcher | undefined;

  /** Makes one more pattern ready; false once all are. */
  prepare(): boolean {
    const next = this.patterns[this.#done];
    if (next) {
      const tree = parseRightHandSide(next.phrase.patterns[next.pattern] as string);
      this.#entries.push(...entriesOf({ id: this.#done, tree }, this.#inline));
      this.#done += 1;
    } else this.#matcher ??= matcherOf(this.#entries);
    return this.#matcher === undefined;
  }

  /** The matcher over all patterns; what of them is not ready yet is made so at once. */
  get matcher(): Matcher {
    while (this.prepare());
    return this.#matcher as Matcher;
  }
}
