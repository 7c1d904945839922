import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { MUTED_LIMIT_MS, openMicrophone } from "../../../src/speech/offline/microphone.ts";

class FakeTrack {
  onended: (() => void) | null = null;
  onmute: (() => void) | null = null;
  onunmute: (() => void) | null = null;
  muted = false;
  isStopped = false;
  turn(muted: boolean) {
    this.muted = muted;
    if (muted) this.onmute?.();
    else this.onunmute?.();
  }
  stop() {
    this.isStopped = true;
  }
}

class FakeNode {
  static last: FakeNode | undefined;
  readonly port = { postMessage: () => {} };
  onprocessorerror: (() => void) | null = null;
  constructor() {
    FakeNode.last = this;
  }
}

class FakeContext {
  static readonly made: FakeContext[] = [];
  /** Like Firefox: what is connected must have the microphone's rate. */
  static onlyAtHz: number | undefined;
  static hasWorklet = true;
  /** As in a call. */
  static isHalted = false;
  readonly sampleRate: number;
  state = "suspended";
  onstatechange: (() => void) | null = null;
  resumed = 0;
  audioWorklet = {
    async addModule() {
      if (!FakeContext.hasWorklet) throw new DOMException("as told", "AbortError");
    },
  };

  constructor({ sampleRate = 44_100 }: { sampleRate?: number } = {}) {
    this.sampleRate = sampleRate;
    FakeContext.made.push(this);
  }

  createMediaStreamSource() {
    const { onlyAtHz } = FakeContext;
    if (onlyAtHz !== undefined && onlyAtHz !== this.sampleRate)
      throw new DOMException("different sample-rate", "NotSupportedError");
    return { connect() {} };
  }

  async resume() {
    this.resumed += 1;
    if (FakeContext.isHalted) await new Promise(() => {});
    this.state = "running";
  }

  async close() {
    this.state = "closed";
  }
}

let track: FakeTrack;
let lost: string[];
let over: AbortController;
const open = () => openMicrophone((why) => lost.push(why), over.signal);

beforeEach(() => {
  track = new FakeTrack();
  lost = [];
  over = new AbortController();
  FakeContext.isHalted = false;
  FakeContext.made.length = 0;
  FakeContext.onlyAtHz = undefined;
  FakeContext.hasWorklet = true;
  const getUserMedia = async () => ({ getTracks: () => [track] });
  vi.stubGlobal("navigator", { mediaDevices: { getUserMedia } });
  vi.stubGlobal("AudioContext", FakeContext);
  vi.stubGlobal("AudioWorkletNode", FakeNode);
});

afterEach(() => {
  vi.unstubAllGlobals();
  vi.useRealTimers();
});

describe("a microphone", () => {
  it("is heard at the suppressor's rate, and closed whole", async () => {
    const { rateHz } = await open();
    expect([rateHz, FakeContext.made[0]?.state]).toEqual([48_000, "running"]);
    over.abort();
    expect([track.isStopped, FakeContext.made[0]?.state]).toEqual([true, "closed"]);
    expect(lost).toEqual([]);
  });

  it("is heard at its own rate where the browser connects no other", async () => {
    FakeContext.onlyAtHz = 44_100;
    expect((await open()).rateHz).toBe(44_100);
  });

  it("is let go where the worklet does not load", async () => {
    FakeContext.hasWorklet = false;
    await expect(open()).rejects.toThrow("as told");
    expect([track.isStopped, FakeContext.made[0]?.state]).toEqual([true, "closed"]);
  });

  it("is closed where its sound is halted before it ever came, and where it comes too late", async () => {
    FakeContext.isHalted = true;
    void open();
    await vi.waitFor(() => expect(FakeContext.made[0]?.resumed).toBe(1));
    over.abort();
    expect([track.isStopped, FakeContext.made[0]?.state]).toEqual([true, "closed"]);
    track = new FakeTrack();
    await expect(open()).rejects.toThrow();
    expect([track.isStopped, FakeContext.made.length]).toEqual([true, 1]);
  });

  it("goes on after the system has halted it", async () => {
    await open();
    const [context] = FakeContext.made;
    if (context) context.state = "interrupted";
    context?.onstatechange?.();
    expect([context?.state, context?.resumed]).toEqual(["running", 2]);
  });

  it("tells when it is unplugged and when the worklet fails", async () => {
    await open();
    track.onended?.();
    FakeNode.last?.onprocessorerror?.();
    expect(lost).toEqual(["the track ended", "the worklet failed"]);
  });

  it("is given up once it has been muted for long, from the start or later, until it is closed", async () => {
    vi.useFakeTimers();
    track.muted = true;
    await open();
    vi.advanceTimersByTime(MUTED_LIMIT_MS - 1);
    expect(lost).toEqual([]);
    vi.advanceTimersByTime(1);
    expect(lost.splice(0)).toEqual(["the track stays muted"]);
    track.turn(true);
    vi.advanceTimersByTime(MUTED_LIMIT_MS - 1);
    track.turn(false);
    vi.advanceTimersByTime(MUTED_LIMIT_MS);
    expect(lost).toEqual([]);
    track.turn(true);
    vi.advanceTimersByTime(MUTED_LIMIT_MS);
    expect(lost).toEqual(["the track stays muted"]);
    track.turn(true);
    over.abort();
    vi.advanceTimersByTime(MUTED_LIMIT_MS);
    expect(lost).toHaveLength(1);
  });
});
