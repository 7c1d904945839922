import { beforeEach, describe, expect, it } from "vitest";
import {
  END_LIMIT_MS,
  FIRST_OPEN_LIMIT_MS,
  OPEN_LIMIT_MS,
  READY_LIMIT_MS,
  SOUND_LIMIT_MS,
} from "../../../src/speech/offline/offline-recogniser.ts";
import { Scene } from "./scripted-worker.ts";

let scene: Scene;

beforeEach(() => {
  scene = new Scene();
});

const heard = (text: string) => scene.heard(text);

describe("faults of the ears inside the app", () => {
  it.each([
    ["NotAllowedError", "not-allowed"],
    ["NotFoundError", "no-microphone"],
    ["NotReadableError", "busy"],
    ["SomethingNew", "stalled"],
  ])("%s of the microphone is told as %s", async (name, reason) => {
    scene.refusal = name;
    await scene.start();
    expect(scene.ears.told).toEqual([`trouble: ${reason}`, "end"]);
    expect(scene.clock.pending).toBe(0);
  });

  it("a microphone taken away ends the run once what was said is delivered, and another can be opened", async () => {
    await scene.listen();
    scene.microphones[0]?.lose("the track ended");
    scene.worker.says(heard("lost one"));
    scene.worker.says({ is: "finished" });
    expect(scene.ears.told).toEqual([
      "listening",
      "said: lost one",
      "trouble: no-microphone",
      "end",
    ]);
    expect(scene.openMicrophones).toBe(0);
    await scene.listen();
    expect(scene.ears.told.at(-1)).toBe("listening");
    scene.microphones[0]?.lose("late news of the first");
    expect(scene.ears.told.at(-1)).toBe("listening");
  });

  it("a worker that crashes is replaced at the next start", async () => {
    await scene.listen();
    const first = scene.worker;
    first.crashes();
    expect(scene.ears.told).toEqual(["listening", "trouble: stalled", "end"]);
    expect([first.isTerminated, scene.openMicrophones]).toEqual([true, 0]);
    await scene.listen();
    expect(scene.workers).toHaveLength(2);
    expect(scene.ears.told.at(-1)).toBe("listening");
  });

  it("a worker that crashes while nobody listens is replaced, too", async () => {
    await scene.recogniser.prepare();
    scene.worker.crashes();
    await scene.listen();
    expect(scene.workers).toHaveLength(2);
    expect(scene.ears.told).toEqual(["listening"]);
  });

  it("a worker that fails to prepare is told of", async () => {
    await scene.start();
    scene.worker.says({ is: "failed", detail: "The decoder refused the model." });
    expect(scene.ears.told).toEqual(["trouble: stalled", "end"]);
    expect(scene.worker.isTerminated).toBe(true);
  });

  it("sound that stops coming, as when a call halts it, ends the run", async () => {
    await scene.listen();
    for (let second = 0; second < 30; second += 1) {
      scene.clock.advance(1_000);
      scene.worker.says({ is: "alive" });
    }
    expect(scene.ears.told).toEqual(["listening"]);
    scene.clock.advance(SOUND_LIMIT_MS);
    scene.worker.says(heard("lost one"));
    scene.worker.says({ is: "finished" });
    expect(scene.ears.told).toEqual(["listening", "said: lost one", "trouble: stalled", "end"]);
    expect([scene.worker.isTerminated, scene.openMicrophones]).toEqual([false, 0]);
  });

  it("a microphone taken away from a worker that hangs is still what is told", async () => {
    await scene.listen();
    scene.microphones[0]?.lose("the track ended");
    scene.clock.advance(END_LIMIT_MS);
    expect(scene.ears.told).toEqual(["listening", "trouble: no-microphone", "end"]);
  });

  it("a microphone taken away once it was told to stop troubles nobody", async () => {
    await scene.listen();
    scene.recogniser.stop();
    scene.microphones[0]?.lose("the track ended");
    scene.worker.says({ is: "finished" });
    expect(scene.ears.told).toEqual(["listening", "end"]);
  });

  it("a worker that hangs is given up, and another hired", async () => {
    await scene.listen();
    scene.clock.advance(SOUND_LIMIT_MS + END_LIMIT_MS);
    expect(scene.ears.told).toEqual(["listening", "trouble: stalled", "end"]);
    expect([scene.worker.isTerminated, scene.openMicrophones]).toEqual([true, 0]);
    await scene.listen();
    expect(scene.workers).toHaveLength(2);
    scene.ears.told.length = 0;
    scene.workers[0]?.says(heard("late"));
    scene.workers[0]?.crashes();
    expect(scene.ears.told).toEqual([]);
  });

  it("a worker that never gets ready, or never finishes, is waited for so long only", async () => {
    await scene.start();
    scene.clock.advance(READY_LIMIT_MS);
    expect(scene.ears.told.splice(0)).toEqual(["trouble: stalled", "end"]);
    await scene.listen();
    scene.recogniser.stop();
    scene.worker.says({ is: "alive" });
    scene.clock.advance(END_LIMIT_MS);
    expect(scene.ears.told).toEqual(["listening", "trouble: stalled", "end"]);
    expect([scene.workers.length, scene.openMicrophones]).toEqual([2, 0]);
  });

  it("a microphone that never opens is waited for so long only, and closed if half open", async () => {
    scene.hangsOpening = true;
    await scene.start();
    scene.clock.advance(FIRST_OPEN_LIMIT_MS - 1);
    expect([scene.ears.told, scene.openMicrophones]).toEqual([[], 1]);
    scene.clock.advance(1);
    expect(scene.ears.told).toEqual(["trouble: stalled", "end"]);
    // In a call that goes on and on: the worker is not loaded anew at each try.
    expect([scene.worker.isTerminated, scene.openMicrophones]).toEqual([false, 0]);
  });

  it("a microphone that is refused too late troubles nobody", async () => {
    scene.hangsOpening = true;
    await scene.start();
    scene.recogniser.stop();
    scene.hangsOpening = false;
    await scene.listen();
    scene.failLate(new DOMException("late", "NotAllowedError"));
    await scene.settle();
    expect(scene.ears.told).toEqual(["end", "listening"]);
    expect(scene.openMicrophones).toBe(1);
  });

  it("once it was open, a microphone is waited for less long", async () => {
    await scene.listen();
    scene.recogniser.stop();
    scene.worker.says({ is: "finished" });
    scene.hangsOpening = true;
    await scene.start();
    scene.clock.advance(OPEN_LIMIT_MS);
    expect(scene.ears.told.slice(-2)).toEqual(["trouble: stalled", "end"]);
  });
});
