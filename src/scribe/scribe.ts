import { Language } from "../../grammar/language.ts";
import { createReader, type Reader, type ReaderOptions } from "../../grammar/read.ts";
import { sayRounded } from "../../grammar/saying/rounded.ts";
import type { PastSession } from "../analysis/seasons/past.ts";
import type { Heard } from "../log/event.ts";
import type { Answer } from "../speech/talkback.ts";
import { replyWords } from "../words/replies.ts";
import { reviewWords } from "../words/review.ts";
import { hasOwnAnswer, type OwnQuestion } from "./answers/asking.ts";
import { judge } from "./judge.ts";
import type { LastHeard, PossibleReading } from "./news.ts";
import type { Notebook } from "./notebook.ts";
import { ownWords } from "./own-words.ts";
import { Reckoning } from "./reckoning.ts";
import { replyTo } from "./replies.ts";
import type { Settings } from "./settings.ts";
import { Watch } from "./watch.ts";
import { isForAnswerOnly, type Said, writingOf } from "./writing.ts";
import { isYes } from "./yes.ts";

/** One thing said or typed. */
export interface Spoken {
  /** Best first. */
  alternatives: readonly string[];
  /** 0 to 1; absent where none is given. */
  confidence?: number;
  by: Heard["by"];
  /** Milliseconds since the epoch; absent for now. */
  startedAt?: number;
}

export interface ScribeOptions {
  notebook: Notebook;
  /** The language, where it is made ready beforehand. */
  language?: Language;
  /** Why the notebook's keeper could not store, in a sentence, while it lasts. */
  trouble(): string | undefined;
  settings(): Settings;
  /** Sets how much is said, when the angler asks for it. */
  setLevel(level: Settings["talkback"]): void;
  /** What earlier sessions left; absent where there is nothing to go by. */
  past?(): readonly PastSession[];
  /** Milliseconds since the epoch. */
  now(): number;
  /** Tells the angler by tone and voice. */
  tell(answer: Answer): unknown;
  /** Speaks up unasked; where several tabs look at one session, one of them does. */
  warn(answer: Answer): unknown;
  /** Shows a warning or a reminder. */
  remind(words: string): void;
  /** The entry that the angler has before him, by its id: what "that" means. */
  inQuestion?(): string | undefined;
}

/** Takes down what is said into one notebook: heard, read, judged, written, answered. */
export class Scribe {
  readonly #options: ScribeOptions;
  readonly #language: Language;
  readonly #watch = new Watch();
  readonly #reckoning: Reckoning;
  /** The last question, for when it is asked how sure the answer is. */
  #asked: OwnQuestion | undefined;
  #reader: { reader: Reader; key: string } | undefined;
  /** One utterance at a time: each is read against what the one before has left. */
  #queue: Promise<unknown> = Promise.resolve();

  /** Once the log is read and looked at: what is new is told from what was there before. */
  readonly #opened: Promise<void>;
  #isOpen = false;

  constructor(options: ScribeOptions) {
    this.#options = options;
    this.#language = options.language ?? new Language();
    this.#reckoning = new Reckoning(options.past);
    this.#opened = options.notebook.ready.then(() => {
      this.#isOpen = true;
      this.look();
    });
  }

  /** Never fails: what cannot be stored is kept in memory, and the answer says so. */
  hear(spoken: Spoken): Promise<LastHeard> {
    return this.#next(() => this.#read(spoken));
  }

  /** Who types looks for an answer; who talks to a neighbour wants none, so `hear` keeps silent. */
  async type(text: string): Promise<LastHeard> {
    const last = await this.hear({ alternatives: [text], by: "typed" });
    if (last.verdict === "ignore") this.#options.tell(NOT_UNDERSTOOD);
    return last;
  }

  /** As if "scratch that" were said, call word or not. */
  takeBack(): Promise<LastHeard> {
    return this.#next(async () => {
      await this.#opened;
      return this.#write(SCRATCHED);
    });
  }

  /** Speaks what has come due: limits, time and reminders. To be called once a second or so. */
  look(): void {
    if (!this.#isOpen) return;
    const { notebook, now, settings } = this.#options;
    const reckoned = this.#reckoning.of(notebook.session.value);
    const { session, sums } = reckoned;
    const { warnings } = settings();
    const sight = { ...reckoned, now: now(), units: settings(), warnings };
    for (const alarm of this.#watch.alarms(sight)) {
      this.#options.warn({ outcome: "warning", short: alarm, full: alarm });
      this.#options.remind(alarm);
    }
    const nudge = this.#watch.nudge(session, now(), sums.fedAt);
    if (nudge === undefined) return;
    this.#options.warn({ short: nudge, full: nudge, asked: true });
    this.#options.remind(nudge);
  }

  /** The ways a line can be read, talk or not, best first; a call word is not asked for. */
  readings({
    text,
    alternatives = [],
  }: {
    text: string;
    alternatives?: readonly string[] | undefined;
  }): PossibleReading[] {
    const reader = this.#readerFor({ own: ownWords(this.#options.notebook.session.value.plan) });
    const found = [text, ...alternatives].flatMap((line): PossibleReading[] => {
      const { heard, possible } = reader.read([line]);
      return possible.length > 0
        ? [{ heard, said: possible.map(sayRounded).join(", "), statements: possible }]
        : [];
    });
    return found.filter(({ said }, i) => found.findIndex((one) => one.said === said) === i);
  }

  #next<T>(task: () => Promise<T>): Promise<T> {
    const result = this.#queue.then(task);
    this.#queue = result.catch(() => {});
    return result;
  }

  async #read({ alternatives, confidence, by, startedAt }: Spoken): Promise<LastHeard> {
    const { notebook, settings } = this.#options;
    await this.#opened;
    const agreed = this.#agreed(alternatives);
    if (agreed !== undefined) {
      const heard = heardOf(alternatives[0] ?? "", alternatives, confidence, by);
      return this.#write({ statements: [], doubts: [], verdict: "log", heard, settles: agreed });
    }
    const { callWord } = settings();
    const reader = this.#readerFor({
      own: ownWords(notebook.session.value.plan),
      ...(callWord !== undefined && { callWord }),
    });
    const reading = reader.read(alternatives);
    return this.#write({
      statements: reading.statements,
      doubts: reading.doubts,
      verdict: judge(reading, confidence, by),
      heard: heardOf(reading.heard, alternatives, confidence, by),
      ...(startedAt !== undefined && { at: startedAt }),
    });
  }

  /** The doubtful entry on the screen that was just found right in so many words. */
  #agreed(alternatives: readonly string[]): string | undefined {
    const id = this.#options.inQuestion?.();
    const entry = this.#options.notebook.session.value.entries.find((one) => one.id === id);
    return entry?.verdict === "check" && alternatives.some(isYes) ? id : undefined;
  }

  async #write(said: Said & { doubts: readonly string[] }): Promise<LastHeard> {
    const { notebook, now, setLevel, settings, tell, trouble } = this.#options;
    const before = notebook.session.value;
    const { notes, missed } = writingOf(said, before, this.#options.inQuestion?.());
    const kept = notes.length > 0 ? await notebook.write(notes) : undefined;
    const asking = {
      ...this.#reckoning.of(notebook.session.value),
      now: now(),
      units: settings(),
      ...(this.#asked !== undefined && { before: this.#asked }),
    };
    const level = said.statements.findLast((one) => one.kind === "talkback")?.level;
    if (level !== undefined) setLevel(level);
    const reply = replyTo({ ...said, missed, kept, trouble: trouble(), before, asking });
    if (reply) tell(reply);
    const asked = said.statements.findLast((one) => one.kind === "ask")?.what;
    if (asked !== undefined && hasOwnAnswer(asked)) this.#asked = asked;
    this.look();
    return {
      text: said.heard.text,
      verdict: said.verdict,
      understood: understoodOf(said),
      ...(isWorded(reply) && { answer: reply.full }),
      isStored: kept?.isStored ?? true,
      at: said.at ?? now(),
    };
  }

  /** The last one is kept while it fits. */
  #readerFor(options: ReaderOptions): Reader {
    const key = JSON.stringify(options);
    if (this.#reader?.key !== key)
      this.#reader = { reader: createReader(options, this.#language), key };
    return this.#reader.reader;
  }
}

const SCRATCHED: Said & { doubts: readonly string[] } = {
  statements: [{ kind: "withdraw", of: "last" }],
  doubts: [],
  verdict: "log",
  heard: { text: replyWords.scratched, by: "touched" },
};

const NOT_UNDERSTOOD: Answer = {
  outcome: "not-understood",
  short: replyWords.notUnderstood,
  full: replyWords.notUnderstood,
};

/** Answers to questions, corrections that missed and troubles are shown as well as spoken. */
const isWorded = (reply: Answer | undefined): reply is Answer =>
  reply !== undefined && (reply.asked === true || reply.outcome === "warning");

const understoodOf = ({ statements, settles }: Said): string[] =>
  settles === undefined
    ? statements.filter((one) => !isForAnswerOnly(one)).map(sayRounded)
    : [reviewWords.rightAsItIs];

function heardOf(
  text: string,
  alternatives: readonly string[],
  confidence: number | undefined,
  by: Heard["by"],
): Heard {
  const others = alternatives.filter((one) => one !== text);
  return {
    text,
    by,
    ...(others.length > 0 && { alternatives: others }),
    ...(confidence !== undefined && { confidence }),
  };
}
