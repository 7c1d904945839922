import { describe, expect, it } from "vitest";
import {
  AVAILABLE_LIMIT_MS,
  findLocalLanguage,
  INSTALL_LIMIT_MS,
  installLocally,
} from "../../src/speech/on-device.ts";
import type { Availability, WebRecognitionConstructor } from "../../src/speech/web-speech-types.ts";
import { FakeClock } from "./fake-clock.ts";
import { FakeLocalRecognition } from "./fake-recognition.ts";

const settle = () => new Promise((resolve) => setImmediate(resolve));

function browserWith(
  statics: Partial<Pick<WebRecognitionConstructor, "available" | "install">>,
): WebRecognitionConstructor {
  class Local extends FakeLocalRecognition {}
  return Object.assign(Local as unknown as WebRecognitionConstructor, statics);
}

function knowing(languages: Record<string, Availability>) {
  return browserWith({
    available: async ({ langs, processLocally }) =>
      (processLocally && languages[langs[0] ?? ""]) || "unavailable",
  });
}

describe("findLocalLanguage", () => {
  it.each([
    [
      { "en-GB": "available", "en-US": "available" },
      { lang: "en-GB", status: "available" },
    ],
    [{ "en-US": "available" }, { lang: "en-US", status: "available" }],
    [
      { "en-GB": "downloadable", "en-US": "available" },
      { lang: "en-US", status: "available" },
    ],
    [{ "en-US": "downloadable" }, { lang: "en-US", status: "downloadable" }],
    [{ "de-DE": "available" }, undefined],
  ] as Array<[Record<string, Availability>, unknown]>)("of %j is %j", async (has, found) => {
    expect(await findLocalLanguage(knowing(has), new FakeClock())).toEqual(found);
  });

  it("finds none where the browser cannot be asked, or throws", async () => {
    expect(await findLocalLanguage(browserWith({}), new FakeClock())).toBeUndefined();
    const available = () => {
      throw new TypeError("as scripted");
    };
    expect(await findLocalLanguage(browserWith({ available }), new FakeClock())).toBeUndefined();
  });

  it("gives up on an answer that does not come", async () => {
    const clock = new FakeClock();
    const found = findLocalLanguage(browserWith({ available: () => new Promise(() => {}) }), clock);
    clock.advance(AVAILABLE_LIMIT_MS);
    await settle();
    clock.advance(AVAILABLE_LIMIT_MS);
    expect(await found).toBeUndefined();
  });
});

describe("installLocally", () => {
  it("asks at once, within the gesture", async () => {
    const asked: unknown[] = [];
    const install = async (options: unknown) => {
      asked.push(options);
      return true;
    };
    const done = installLocally(browserWith({ install }), "en-US", new FakeClock());
    expect(asked).toEqual([{ langs: ["en-US"], processLocally: true }]);
    expect(await done).toBe(true);
  });

  it("is false where it is refused, unknown, or hangs", async () => {
    const clock = new FakeClock();
    const refused = browserWith({ install: () => Promise.reject(new Error("as scripted")) });
    expect(await installLocally(refused, "en-US", clock)).toBe(false);
    expect(await installLocally(browserWith({}), "en-US", clock)).toBe(false);
    const hanging = browserWith({ install: () => new Promise(() => {}) });
    const done = installLocally(hanging, "en-US", clock);
    clock.advance(INSTALL_LIMIT_MS);
    expect(await done).toBe(false);
    expect(clock.pending).toBe(0);
  });
});
