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
  expect(isUntouched(document)).toBe(true);
  location.hash = "#set-up";
  expect(isUntouched(document)).toBe(false);
  location.hash = "#live";
  expect(isUntouched(document)).toBe(true);
  for (const field of document.querySelectorAll("input")) field.value = "carp";
  expect(isUntouched(document)).toBe(false);
});

test("a page that was touched just now may be touched again at once", () => {
  vi.stubGlobal("navigator", { userActivation: { isActive: true } });
  expect(isUntouched(document)).toBe(false);
});
