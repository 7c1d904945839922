import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { openMicrophone } from "../../../src/speech/offline/microphone.ts";

class FakeTrack {
  onended: (() => void) | null = null;
  isStopped = false;
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
    this.state = "running";
  }

  async close() {
    this.state = "closed";
  }
}

let track: FakeTrack;
let lost: string[];
const open = () => openMicrophone((why) => lost.push(why));

beforeEach(() => {
  track = new FakeTrack();
  lost = [];
  FakeContext.made.length = 0;
  FakeContext.onlyAtHz = undefined;
  FakeContext.hasWorklet = true;
  const getUserMedia = async () => ({ getTracks: () => [track] });
  vi.stubGlobal("navigator", { mediaDevices: { getUserMedia } });
  vi.stubGlobal("AudioContext", FakeContext);
  vi.stubGlobal("AudioWorkletNode", FakeNode);
});

afterEach(() => vi.unstubAllGlobals());

describe("a microphone", () => {
  it("is heard at the suppressor's rate, and closed whole", async () => {
    const { rateHz, close } = await open();
    expect([rateHz, FakeContext.made[0]?.state]).toEqual([48_000, "running"]);
    close();
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
});
