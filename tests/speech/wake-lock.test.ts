import { expect, it } from "vitest";
import { ScreenWakeLock, type WakeLockState } from "../../src/speech/wake-lock.ts";

class FakeSentinel extends EventTarget {
  released = false;
  readonly type = "screen";
  onrelease = null;

  async release() {
    this.released = true;
    this.dispatchEvent(new Event("release"));
  }
}

class FakeDocument extends EventTarget {
  visibilityState: DocumentVisibilityState = "visible";

  show(state: DocumentVisibilityState) {
    this.visibilityState = state;
    this.dispatchEvent(new Event("visibilitychange"));
  }
}

/** Lets everything promised so far come true. */
const settle = () => new Promise((resolve) => setImmediate(resolve));

function lock(options: { refuse?: boolean; unsupported?: boolean } = {}) {
  const states: WakeLockState[] = [];
  const sentinels: FakeSentinel[] = [];
  const page = new FakeDocument();
  const request = async () => {
    if (options.refuse) throw new DOMException("low power", "NotAllowedError");
    const sentinel = new FakeSentinel();
    sentinels.push(sentinel);
    return sentinel as unknown as WakeLockSentinel;
  };
  const wakeLock = new ScreenWakeLock({
    onState: (state) => states.push(state),
    wakeLock: options.unsupported ? undefined : { request },
    document: page as unknown as Document,
  });
  return { states, sentinels, page, wakeLock };
}

it("holds the screen until let go", async () => {
  const { states, sentinels, wakeLock } = lock();
  wakeLock.keep();
  await settle();
  expect(wakeLock.state).toBe("held");
  wakeLock.letGo();
  expect(sentinels[0]?.released).toBe(true);
  await settle();
  expect(states).toEqual(["asking", "held", "off"]);
});

it("asks again when the page is shown after the system took the lock", async () => {
  const { states, sentinels, page, wakeLock } = lock();
  wakeLock.keep();
  await settle();
  page.show("hidden");
  await sentinels[0]?.release();
  expect(wakeLock.state).toBe("lost");
  page.show("visible");
  await settle();
  expect(states).toEqual(["asking", "held", "lost", "asking", "held"]);
});

it("says that it was refused, and asks again at the next showing", async () => {
  const { states, page, wakeLock } = lock({ refuse: true });
  wakeLock.keep();
  await settle();
  page.show("visible");
  await settle();
  expect(states).toEqual(["asking", "lost", "asking", "lost"]);
});

it("does not ask while hidden, nor after letting go", async () => {
  const { sentinels, page, wakeLock } = lock();
  page.visibilityState = "hidden";
  wakeLock.keep();
  await settle();
  expect(sentinels).toHaveLength(0);
  wakeLock.letGo();
  page.show("visible");
  await settle();
  expect(sentinels).toHaveLength(0);
});

it("gives back a lock that arrives too late, and keeps one of two", async () => {
  const { sentinels, wakeLock } = lock();
  wakeLock.keep();
  wakeLock.letGo();
  wakeLock.keep();
  await settle();
  expect(sentinels.map(({ released }) => released)).toEqual([false, true]);
  expect(wakeLock.state).toBe("held");
});

it("says that the browser has none", () => {
  const { wakeLock } = lock({ unsupported: true });
  wakeLock.keep();
  expect(wakeLock.state).toBe("unsupported");
});
