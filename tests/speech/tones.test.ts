import { describe, expect, it } from "vitest";
import { TonePlayer } from "../../src/speech/tone-player.ts";
import { MOTIFS, motifLengthMs, type Note, type Outcome } from "../../src/speech/tones.ts";

const OUTCOMES = Object.keys(MOTIFS) as Outcome[];
const PAIRS = OUTCOMES.flatMap((a, rank) =>
  OUTCOMES.slice(rank + 1).map((b): [Outcome, Outcome] => [a, b]),
);

/** How the pitch moves from note to note: + up, - down, 0 level. */
function contour(notes: readonly Note[]): string {
  return notes
    .slice(1)
    .map(({ hz }, index) => Math.sign(hz - (notes[index]?.hz ?? hz)))
    .map((sign) => (sign > 0 ? "+" : sign < 0 ? "-" : "0"))
    .join("");
}

/** When the notes sound, in steps of 60 ms, about the least difference in time one hears clearly. */
function rhythm(notes: readonly Note[]): string {
  return notes
    .map(({ atMs, lengthMs }) => `${Math.round(atMs / 60)}:${Math.round(lengthMs / 60)}`)
    .join(" ");
}

describe("motifs", () => {
  it.each(PAIRS)("%s and %s differ in contour and in rhythm", (a, b) => {
    expect(contour(MOTIFS[a])).not.toBe(contour(MOTIFS[b]));
    expect(rhythm(MOTIFS[a])).not.toBe(rhythm(MOTIFS[b]));
  });

  it.each(OUTCOMES)("%s is short, above the wind, and its notes do not overlap", (outcome) => {
    const notes = MOTIFS[outcome];
    expect(motifLengthMs(outcome)).toBeLessThanOrEqual(700);
    for (const [index, note] of notes.entries()) {
      expect(note.hz).toBeGreaterThanOrEqual(600);
      const next = notes[index + 1];
      if (next) expect(note.atMs + note.lengthMs).toBeLessThan(next.atMs);
    }
  });
});

class FakeContext {
  static made: FakeContext[] = [];
  state = "suspended";
  currentTime = 5;
  resumed = 0;
  oscillators: Array<{ hz: number; begin: number; end: number }> = [];
  destination = {};

  constructor() {
    FakeContext.made.push(this);
  }

  resume = async () => {
    this.resumed += 1;
    this.state = "running";
  };

  createGain() {
    const gain = { setValueAtTime: () => {}, linearRampToValueAtTime: () => {} };
    return { gain, connect: () => {} };
  }

  createOscillator() {
    const record = { hz: 0, begin: 0, end: 0 };
    this.oscillators.push(record);
    return {
      type: "",
      frequency: {
        set value(hz: number) {
          record.hz = hz;
        },
      },
      connect: <T>(target: T) => target,
      start: (at: number) => {
        record.begin = at;
      },
      stop: (at: number) => {
        record.end = at;
      },
    };
  }
}

function player() {
  FakeContext.made = [];
  return new TonePlayer(FakeContext as unknown as typeof AudioContext);
}

describe("TonePlayer", () => {
  it("makes no context before a gesture and is silent until then", () => {
    const tones = player();
    expect(tones.play("logged")).toBe(0);
    expect(FakeContext.made).toHaveLength(0);
  });

  it("resumes the one context it makes, and plays each note of the motif", () => {
    const tones = player();
    tones.unlock();
    tones.unlock();
    expect(FakeContext.made).toHaveLength(1);
    expect(FakeContext.made[0]?.resumed).toBe(1);
    expect(tones.play("logged")).toBe(motifLengthMs("logged"));
    expect(FakeContext.made[0]?.oscillators).toEqual([
      { hz: 740, begin: 5, end: 5.08 },
      { hz: 1110, begin: 5.11, end: 5.29 },
    ]);
  });

  it("neither resumes an interrupted context nor stores up notes for later", () => {
    const tones = player();
    tones.unlock();
    const context = FakeContext.made[0];
    if (!context) throw new Error("no context made");
    context.state = "interrupted";
    expect(tones.play("warning")).toBe(0);
    expect(context.resumed).toBe(1);
    expect(context.oscillators).toEqual([]);
  });
});
