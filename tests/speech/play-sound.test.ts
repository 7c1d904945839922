import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { LATE_MS, playSound } from "../../src/speech/play-sound.ts";

const SECOND = new Float32Array(8000);

let isHalted: boolean;
let isRefused: boolean;
let closes: boolean;
let source: { onended: (() => void) | null };
let closed: number;

beforeEach(() => {
  vi.useFakeTimers();
  [isHalted, isRefused, closes, closed] = [false, false, true, 0];
  source = { onended: null };
  class FakeContext {
    createBuffer = () => ({ copyToChannel() {} });
    resume = async () => {
      if (isRefused) throw new Error("no gesture");
      if (isHalted) await new Promise(() => {});
    };
    close = async () => {
      closed += 1;
      if (!closes) await new Promise(() => {});
    };
  }
  class FakeSource {
    connect() {}
    start() {}
    set onended(over: () => void) {
      source.onended = over;
    }
  }
  vi.stubGlobal("AudioContext", FakeContext);
  vi.stubGlobal("AudioBufferSourceNode", FakeSource);
});

afterEach(() => {
  vi.unstubAllGlobals();
  vi.useRealTimers();
});

function playing() {
  const over = vi.fn();
  void playSound(SECOND, 8000).then(over);
  return over;
}

test("a sound is waited for to its end", async () => {
  const over = playing();
  await vi.advanceTimersByTimeAsync(1000);
  expect([over.mock.calls.length, closed]).toEqual([0, 0]);
  source.onended?.();
  await vi.advanceTimersByTimeAsync(0);
  expect([over.mock.calls.length, closed, vi.getTimerCount()]).toEqual([1, 1, 0]);
});

test.each([true, false])(
  "one that a call halts is waited for so long only (before it began: %s)",
  async (before) => {
    isHalted = before;
    const over = playing();
    await vi.advanceTimersByTimeAsync(1000 + LATE_MS - 1);
    expect(over).not.toHaveBeenCalled();
    await vi.advanceTimersByTimeAsync(1);
    expect([over.mock.calls.length, closed]).toEqual([1, 1]);
  },
);

test("where the browser lets no sound out, nothing is waited for", async () => {
  isRefused = true;
  const over = playing();
  await vi.advanceTimersByTimeAsync(0);
  expect([over.mock.calls.length, closed, vi.getTimerCount()]).toEqual([1, 1, 0]);
});

test("nor is a player that does not close waited for without end", async () => {
  closes = false;
  const over = playing();
  await vi.advanceTimersByTimeAsync(0);
  source.onended?.();
  await vi.advanceTimersByTimeAsync(LATE_MS);
  expect(over).toHaveBeenCalledOnce();
});
