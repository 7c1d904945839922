import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { isUntouched } from "../../src/screens/untouched.ts";

beforeEach(() => {
  document.body.innerHTML = "<input>";
});
afterEach(() => {
  vi.unstubAllGlobals();
  location.hash = "";
});

test("only Live with an empty field is nobody's loss", () => {
  expect(isUntouched()).toBe(true);
  location.hash = "#set-up";
  expect(isUntouched()).toBe(false);
  location.hash = "#live";
  expect(isUntouched()).toBe(true);
  for (const field of document.querySelectorAll("input")) field.value = "carp";
  expect(isUntouched()).toBe(false);
});

test("a page that was touched just now may be touched again at once", () => {
  vi.stubGlobal("navigator", { userActivation: { isActive: true } });
  expect(isUntouched()).toBe(false);
});
