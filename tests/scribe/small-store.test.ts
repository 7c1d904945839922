import { afterEach, expect, test, vi } from "vitest";
import { browserSmallStore as small } from "../../src/scribe/small-store.ts";

afterEach(() => vi.unstubAllGlobals());

const refuse = (name: string) => () => {
  throw new DOMException("no", name);
};

test.each(["SecurityError", "QuotaExceededError"])(
  "a browser that refuses by %s keeps nothing, and nothing fails",
  (name) => {
    vi.stubGlobal("localStorage", { getItem: refuse(name), setItem: refuse(name) });
    expect(() => small.set("session", "june")).not.toThrow();
    expect(small.get("session")).toBeUndefined();
  },
);
