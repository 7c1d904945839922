import { signal } from "@preact/signals";
import { expect, test } from "vitest";
import { askBeforeLeaving } from "../../src/scribe/leaving.ts";
import { storingWords } from "../../src/words/storing.ts";

test("the page is not left unasked while something is only in its memory", () => {
  const keeping = signal({ unsaved: 0 });
  const page = new EventTarget();
  askBeforeLeaving(keeping, page);
  const goesUnasked = () => page.dispatchEvent(new Event("beforeunload", { cancelable: true }));
  expect(goesUnasked()).toBe(true);
  keeping.value = { unsaved: 2 };
  expect(goesUnasked()).toBe(false);
  keeping.value = { unsaved: 1 };
  expect(goesUnasked()).toBe(false);
  keeping.value = { unsaved: 0 };
  expect(goesUnasked()).toBe(true);
});

test.each(Object.entries(storingWords))("advice on “%s” loses nothing", (_, advice) => {
  if (/load the page/i.test(advice)) expect(advice).toMatch(/export what is here before/);
});
