/**
 * JSON that strangers may have written. It is looked through before it is parsed: a browser builds
 * whatever it is told to, and of brackets in brackets without end it dies (seen with 40 million).
 */

/** Our own nest some ten deep. */
const DEEPEST = 64;
/** Lists and groups of fields. Of our own some two million stand in the largest file that is opened. */
const MOST_PARTS = 4_000_000;
/**
 * Different words: names of fields, and short texts, each of which a browser enters in its list of
 * all words (8 million took 1 GB). Of our own some hundreds stand in a log, and what was heard.
 */
const MOST_WORDS = 400_000;
/** In letters; V8 enters texts of values up to this length. */
const SHORT = 10;

/** What a text says; undefined where it is no JSON, or holds more than any log. */
export function boundedJson(text: string): unknown {
  if (!isBounded(text)) return undefined;
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

const [QUOTE, BACKSLASH, COLON] = [0x22, 0x5c, 0x3a];
const OPENING = [0x5b, 0x7b];
const CLOSING = [0x5d, 0x7d];

function isBounded(text: string): boolean {
  const words = new Set<string>();
  let quoted = "";
  let from = 0;
  let isQuoted = false;
  let depth = 0;
  let parts = 0;
  for (let place = 0; place < text.length; place += 1) {
    const letter = text.charCodeAt(place);
    if (letter === BACKSLASH) place += 1;
    else if (letter === QUOTE) {
      isQuoted = !isQuoted;
      if (isQuoted) from = place + 1;
      else quoted = text.slice(from, place);
      if (!isQuoted && quoted.length <= SHORT) words.add(quoted);
    } else if (isQuoted) continue;
    else if (letter === COLON) words.add(quoted);
    else if (CLOSING.includes(letter)) depth -= 1;
    else if (OPENING.includes(letter)) {
      depth += 1;
      parts += 1;
    }
    if (depth > DEEPEST || parts > MOST_PARTS || words.size > MOST_WORDS) return false;
  }
  return true;
}
