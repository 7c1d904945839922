import type { Token } from "./text/tokens.ts";
import type { Vocabulary } from "./vocabulary/vocabulary.ts";
export function* repairs(_tokens: readonly Token[], _v: Vocabulary): Generator<Token[]> {}
