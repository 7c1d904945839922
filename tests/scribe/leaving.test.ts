import { signal } from "@preact/signals";
import { expect, test } from "vitest";
import { askBeforeLeaving } from "../../src/scribe/leaving.ts";
import { storingWords } from "../../src/words/storing.ts";

/** As browsers have it, where the value can be set. */
class BeforeUnload extends Event {
  override returnValue = false;

  constructor() {
    super("beforeunload", { cancelable: true });
  }
}

test("the page is not left unasked while something is only in its memory", () => {
  const keeping = signal({ unsaved: 0 });
  const page = new EventTarget();
  askBeforeLeaving(keeping, page);
  const goesUnasked = () => {
    const event = new BeforeUnload();
    const isLeft = page.dispatchEvent(event);
    // Browsers go by the one or the other.
    expect(event.returnValue).toBe(!isLeft);
    return isLeft;
  };
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
