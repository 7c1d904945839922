import { beforeEach, describe, expect, test } from "vitest";
import { EarsCare, type EarsKept } from "../../src/scribe/ears-care.ts";
import type { Progress } from "../../src/speech/offline/ears-files.ts";

/** Files of three megabytes, one at a time. */
class FakeFiles {
  static readonly BYTES = 3e6;
  kept = 0;
  /** What is thrown instead of the next file. */
  trouble: Error | undefined;

  async size() {
    if (this.trouble) throw this.trouble;
    return FakeFiles.BYTES;
  }

  async areKept() {
    return this.kept === 3;
  }

  async keep(onProgress: (progress: Progress) => void) {
    for (let file = 0; file < 3; file += 1) {
      if (file >= this.kept && file > 0 && this.trouble) throw this.trouble;
      this.kept = Math.max(this.kept, file + 1);
      onProgress({ loaded: (file + 1) * 1e6, total: FakeFiles.BYTES });
    }
  }

  async remove() {
    this.kept = 0;
  }
}

let files: FakeFiles;
let asked: number;

beforeEach(() => {
  files = new FakeFiles();
  asked = 0;
});

const care = (part: { isPossible?: boolean; isAppKept?: boolean } = {}) =>
  new EarsCare({
    files,
    isPossible: part.isPossible ?? true,
    askToKeep: async () => {
      asked += 1;
    },
    isAppKept: async () => part.isAppKept ?? true,
  });

const settled = () => new Promise((done) => setTimeout(done));

describe("getting ready for no signal", () => {
  test("tells the size, how far it is, and that it is done", async () => {
    const one = care();
    await one.measure();
    expect(one.state.value).toEqual({ is: "absent", bytes: 3e6 });
    const seen: EarsKept[] = [];
    one.state.subscribe((state) => seen.push(state));
    await one.getReady();
    expect(seen.slice(1)).toEqual([
      { is: "fetching", loaded: 0, total: 3e6 },
      { is: "fetching", loaded: 1e6, total: 3e6 },
      { is: "fetching", loaded: 2e6, total: 3e6 },
      { is: "fetching", loaded: 3e6, total: 3e6 },
      { is: "kept" },
      { is: "kept", startsAlone: true },
    ]);
    expect([one.offline.value, asked]).toEqual(["kept", 1]);
  });

  test("is found done the next time, and says where the app itself is not kept", async () => {
    files.kept = 3;
    const one = care({ isAppKept: false });
    await settled();
    expect(one.state.value).toEqual({ is: "kept", startsAlone: false });
  });

  test("takes newer ears when the app is opened again, and does without where it cannot", async () => {
    files.kept = 3;
    let refreshed = 0;
    files.keep = async () => {
      refreshed += 1;
      throw new TypeError("Failed to fetch");
    };
    const one = care();
    await settled();
    expect([one.state.value, refreshed]).toEqual([{ is: "kept", startsAlone: true }, 1]);
  });

  test("goes on where it broke off, and says what happened", async () => {
    const one = care();
    files.trouble = new TypeError("Failed to fetch");
    await one.getReady();
    expect(one.state.value).toMatchObject({
      is: "absent",
      isPart: true,
      bytes: 3e6,
      trouble: expect.stringMatching(/^The signal broke off\. What came is kept/),
    });
    expect(one.offline.value).toBe("absent");
    files.trouble = undefined;
    await one.getReady();
    expect(one.state.value).toEqual({ is: "kept", startsAlone: true });
  });

  test("says how much room is missing", async () => {
    const one = care();
    files.trouble = new DOMException("as told", "QuotaExceededError");
    await one.getReady();
    expect(one.state.value).toMatchObject({ trouble: expect.stringContaining("need 3.0 MB") });
  });

  test("tells a browser that refuses to keep anything from a signal that breaks off", async () => {
    const one = care();
    files.trouble = new DOMException("as told", "SecurityError");
    await one.getReady();
    expect(one.state.value).toMatchObject({ trouble: expect.stringContaining("private window") });
  });

  test("does not begin twice", async () => {
    const one = care();
    await Promise.all([one.getReady(), one.getReady()]);
    expect(asked).toBe(1);
  });

  test("without a network the size stays unknown", async () => {
    files.trouble = new TypeError("Failed to fetch");
    const one = care();
    await one.measure();
    expect(one.state.value).toEqual({ is: "absent" });
  });

  test("is undone by removing them", async () => {
    const one = care();
    await one.getReady();
    await one.remove();
    expect([one.state.value, files.kept]).toEqual([{ is: "absent", bytes: 3e6 }, 0]);
  });

  test("is not to be had in a browser that cannot run them", async () => {
    files.kept = 3;
    const one = care({ isPossible: false });
    await one.getReady();
    await settled();
    expect([one.state.value.is, one.offline.value, asked]).toEqual(["impossible", "impossible", 0]);
  });
});
