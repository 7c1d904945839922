import { beforeEach, describe, expect, it } from "vitest";
import { USUAL_VOICE } from "../../../src/speech/offline/suit.ts";
import { Scene } from "./scripted-worker.ts";

let scene: Scene;

beforeEach(() => {
  scene = new Scene();
});

const heard = (text: string) => scene.heard(text);

describe("hearing", () => {
  it("opens the microphone, hands its sound to the worker, and tells what it says", async () => {
    await scene.start();
    expect(scene.worker.told).toMatchObject([
      { is: "prepare", base: "https://pegs.example/" },
      { is: "listen", rateHz: 48_000 },
    ]);
    expect(scene.ears.told).toEqual([]);
    scene.worker.says({ is: "ready" });
    scene.worker.says({ is: "interim", text: "new" });
    scene.worker.says(heard("new net"));
    expect(scene.ears.told).toEqual(["listening", "said: new net"]);
    expect(scene.ears.interims).toEqual(["new"]);
    expect(scene.ears.utterances[0]).toMatchObject({
      by: "offline",
      startedAt: scene.clock.now() - 800,
    });
  });

  it("delivers what was said before it ends, and lets go of the microphone", async () => {
    scene.recogniser.stop();
    await scene.listen();
    scene.recogniser.stop();
    scene.recogniser.stop();
    const told = scene.worker.told.map(({ is }) => is);
    expect(told).toEqual(["prepare", "listen", "finish"]);
    expect(scene.ears.told).toEqual(["listening"]);
    scene.worker.says(heard("all out"));
    scene.worker.says({ is: "finished" });
    expect(scene.ears.told).toEqual(["listening", "said: all out", "end"]);
    expect([scene.openMicrophones, scene.clock.pending]).toEqual([0, 0]);
  });

  it("delivers nothing more once it is aborted", async () => {
    await scene.listen();
    scene.recogniser.abort();
    scene.worker.says(heard("all out"));
    expect(scene.ears.told).toEqual(["listening", "end"]);
    expect(scene.openMicrophones).toBe(0);
  });

  it("is given no words of a run that was aborted", async () => {
    await scene.listen();
    scene.recogniser.abort();
    expect(scene.worker.told.at(-1)).toEqual({ is: "finish" });
    await scene.start();
    scene.worker.says(heard("all out"));
    scene.worker.says({ is: "interim", text: "all" });
    scene.worker.says({ is: "finished" });
    scene.worker.says({ is: "ready" });
    scene.worker.says(heard("new net"));
    expect(scene.ears.told).toEqual(["listening", "end", "listening", "said: new net"]);
    expect(scene.ears.interims).toEqual([]);
  });

  it("told to stop before the worker is ready, it ends when the worker does", async () => {
    await scene.start();
    scene.recogniser.stop();
    scene.worker.says({ is: "finished" });
    expect(scene.ears.told).toEqual(["end"]);
  });

  it("starts again with the same worker", async () => {
    await scene.listen();
    scene.recogniser.stop();
    scene.worker.says({ is: "finished" });
    await scene.listen();
    expect(scene.workers).toHaveLength(1);
    expect(scene.ears.told).toEqual(["listening", "end", "listening"]);
  });

  it("opens no microphone where its files are not kept", async () => {
    scene.areKept = false;
    await scene.start();
    expect(scene.ears.told).toEqual(["trouble: not-kept", "end"]);
    expect([scene.workers.length, scene.microphones.length]).toEqual([0, 0]);
  });

  it("opens no microphone once it was stopped", async () => {
    scene.recogniser.start(scene.ears);
    scene.recogniser.stop();
    await scene.settle();
    expect(scene.ears.told).toEqual(["end"]);
    expect(scene.microphones).toEqual([]);
  });

  it("closes a microphone that comes after it was stopped, and hears with the next", async () => {
    scene.hangsOpening = true;
    await scene.start();
    scene.recogniser.stop();
    scene.hangsOpening = false;
    await scene.listen();
    scene.openLate();
    await scene.settle();
    scene.microphones[0]?.lose("the track ended");
    expect(scene.worker.told.map(({ is }) => is)).toEqual(["prepare", "listen"]);
    expect(scene.ears.told).toEqual(["end", "listening"]);
    expect(scene.openMicrophones).toBe(1);
  });

  it("stopped before the worker is ready, is not listening once it is", async () => {
    await scene.start();
    scene.recogniser.stop();
    scene.worker.says({ is: "ready" });
    scene.worker.says(heard("all out"));
    scene.worker.says({ is: "finished" });
    expect(scene.ears.told).toEqual(["said: all out", "end"]);
  });

  it("is loaded beforehand when it is asked to prepare, once", async () => {
    await scene.recogniser.prepare();
    await scene.recogniser.prepare();
    expect(scene.workers).toHaveLength(1);
    expect(scene.microphones).toEqual([]);
  });
});

describe("words of the angler's own", () => {
  const own = { own_species: [{ spoken: "brass carp" }] };

  it("go to a worker hired later", async () => {
    scene.recogniser.learn(own);
    await scene.listen();
    expect(scene.worker.told[0]).toMatchObject({ is: "prepare", suit: { own } });
  });

  it("are learnt while it hears, and only when they change", async () => {
    await scene.listen();
    scene.recogniser.learn(own);
    scene.recogniser.learn(structuredClone(own));
    expect(scene.worker.told.filter(({ is }) => is === "learn")).toMatchObject([
      { is: "learn", suit: { own } },
    ]);
    expect(scene.ears.told).toEqual(["listening"]);
  });
});

describe("kept utterances", () => {
  const sounds = [Uint8Array.of(1)];

  it("are heard anew in another manner", async () => {
    const tried = scene.recogniser.try(sounds, USUAL_VOICE);
    await scene.settle();
    expect(scene.worker.told.at(-1)).toEqual({ is: "try", sounds, manner: USUAL_VOICE });
    scene.worker.says({ is: "tried", tried: [{ text: "new net", fit: -2 }] });
    expect(await tried).toEqual([{ text: "new net", fit: -2 }]);
  });

  it("are not, where the files are not kept or the worker fails", async () => {
    scene.areKept = false;
    await expect(scene.recogniser.try(sounds, USUAL_VOICE)).rejects.toThrow("not been fetched");
    scene.areKept = true;
    const tried = scene.recogniser.try(sounds, USUAL_VOICE);
    await scene.settle();
    scene.worker.crashes();
    await expect(tried).rejects.toThrow("out of memory");
  });

  it("bring their sound, and are taken as the voice wants, from when it is told", async () => {
    await scene.listen();
    scene.recogniser.suit({ withSound: true });
    expect(scene.worker.told.at(-1)).toMatchObject({ is: "learn", suit: { withSound: true } });
  });
});
