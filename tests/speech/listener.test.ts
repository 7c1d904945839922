import { describe, expect, it } from "vitest";
import { FIRST_WAIT_MS, LONGEST_WAIT_MS } from "../../src/speech/back-off.ts";
import { PAUSE_MS, STAY_MS } from "../../src/speech/change-over.ts";
import { BETWEEN_STARTS_MS, ECHO_MS, Listener } from "../../src/speech/listener.ts";
import type { ListenerState } from "../../src/speech/listener-state.ts";
import type { RecogniserKind, TroubleReason } from "../../src/speech/recogniser.ts";
import { AWAY_MS, LONGEST_AWAY_MS, RETRY_REFUSED_MS } from "../../src/speech/standing.ts";
import { FakeClock } from "./fake-clock.ts";
import { FakePage, FakeRecogniser } from "./fake-recogniser.ts";

function listening(...recognisers: FakeRecogniser[]) {
  const clock = new FakeClock();
  const page = new FakePage();
  const states: ListenerState[] = [];
  const heard: string[] = [];
  const troubles: TroubleReason[] = [];
  const listener = new Listener({
    recognisers,
    clock,
    page,
    events: {
      onState: (state) => states.push(state),
      onInterim: (text) => heard.push(`${text} …`),
      onUtterance: ({ alternatives }) => heard.push(alternatives[0]?.text ?? ""),
      onTrouble: ({ reason }) => troubles.push(reason),
    },
  });
  listener.start();
  return { clock, page, states, heard, troubles, listener };
}

describe("restarting", () => {
  it("starts at once, within the gesture, and hands on the words to expect", () => {
    const web = new FakeRecogniser();
    const { listener, states } = listening(web);
    expect(web.starts).toBe(1);
    web.listen();
    expect(states).toEqual([
      { is: "starting", kind: "web" },
      { is: "listening", kind: "web" },
    ]);
    listener.expect(["skimmer"]);
    expect(web.phrases).toEqual([]);
  });

  it("hands on the words to expect at the next start", () => {
    const web = new FakeRecogniser();
    const { clock, listener } = listening(web);
    listener.expect(["skimmer"]);
    clock.advance(5_000);
    web.listen();
    web.end();
    expect(web.phrases).toEqual(["skimmer"]);
  });

  it("restarts at once after a long run, and a second after the last start otherwise", () => {
    const web = new FakeRecogniser();
    const { clock } = listening(web);
    web.listen();
    clock.advance(15_000);
    web.end();
    expect(web.starts).toBe(2);
    web.listen();
    clock.advance(300);
    web.end();
    clock.advance(BETWEEN_STARTS_MS - 301);
    expect(web.starts).toBe(2);
    clock.advance(1);
    expect(web.starts).toBe(3);
  });

  it("is not put off by the wall clock being set back", () => {
    const web = new FakeRecogniser();
    const { clock } = listening(web);
    web.listen();
    clock.advance(100);
    clock.wallShiftMs -= 3_600_000;
    web.end();
    clock.advance(BETWEEN_STARTS_MS);
    expect(web.starts).toBe(2);
  });

  it.each(["no-speech", "aborted"] as const)("takes %s for normal", (reason) => {
    const web = new FakeRecogniser();
    const { clock, states } = listening(web);
    web.listen();
    clock.advance(8_000);
    web.end(reason);
    expect(web.starts).toBe(2);
    expect(states.some(({ is }) => is === "waiting")).toBe(false);
  });

  it("waits longer each time it is cut short with nothing heard in between", () => {
    const web = new FakeRecogniser();
    const { clock, listener } = listening(web);
    for (let cut = 0; cut < 5; cut++) {
      web.listen();
      clock.advance(BETWEEN_STARTS_MS);
      web.end("aborted");
      clock.advance(FIRST_WAIT_MS);
    }
    expect(listener.state).toMatchObject({ is: "waiting", trouble: { reason: "aborted" } });
  });

  it("does not wait when it is cut short again and again, and heard something in between", () => {
    const web = new FakeRecogniser();
    const { clock, states } = listening(web);
    for (let cut = 0; cut < 8; cut++) {
      web.listen();
      web.say("bite", clock.now());
      clock.advance(BETWEEN_STARTS_MS);
      web.end("aborted");
    }
    expect(states.some(({ is }) => is === "waiting")).toBe(false);
  });

  it("waits after a run that ended without ever hearing or saying why", () => {
    const web = new FakeRecogniser();
    const { clock, listener } = listening(web);
    clock.advance(2_000);
    web.end();
    expect(listener.state).toMatchObject({ is: "waiting", trouble: { reason: "stalled" } });
  });
});

describe("growing waits", () => {
  function waits(count: number, between: (web: FakeRecogniser, clock: FakeClock) => void) {
    const web = new FakeRecogniser();
    const { clock, listener } = listening(web);
    const found: number[] = [];
    for (let failure = 0; failure < count; failure++) {
      clock.advance(BETWEEN_STARTS_MS);
      between(web, clock);
      web.end("network");
      if (listener.state.is !== "waiting") throw new Error(`unexpected ${listener.state.is}`);
      const wait = listener.state.until - clock.now();
      found.push(wait);
      const { starts } = web;
      clock.advance(wait - 1);
      expect(web.starts).toBe(starts);
      clock.advance(1);
      expect(web.starts).toBe(starts + 1);
    }
    return found;
  }

  it("double after network up to half a minute, though the microphone opens each time", () => {
    expect(waits(7, (web) => web.listen())).toEqual([
      1_000, 2_000, 4_000, 8_000, 16_000, 30_000, 30_000,
    ]);
    expect(LONGEST_WAIT_MS).toBe(30_000);
  });

  it("begin anew after a real result", () => {
    expect(waits(4, (web, clock) => web.say("bite", clock.now()))).toEqual([
      1_000, 1_000, 1_000, 1_000,
    ]);
  });

  it("are cut short when the network comes back", () => {
    const web = new FakeRecogniser();
    const { clock, page } = listening(web);
    clock.advance(BETWEEN_STARTS_MS);
    web.end("network");
    page.goOnline();
    expect(web.starts).toBe(2);
  });

  it("are cut short when the angler asks, and are not told of once they are over", () => {
    const web = new FakeRecogniser();
    const { clock, listener } = listening(web);
    clock.advance(BETWEEN_STARTS_MS);
    web.end("network");
    listener.start();
    expect(web.starts).toBe(2);
    web.end("network");
    listener.start();
    expect(listener.state).toEqual({ is: "starting", kind: "web" });
  });

  it("are not told of again once it heard", () => {
    const web = new FakeRecogniser();
    const { clock, listener } = listening(web);
    web.end("network");
    clock.advance(FIRST_WAIT_MS);
    web.listen();
    web.end();
    expect(listener.state).toEqual({ is: "starting", kind: "web" });
  });
});

describe("refusal", () => {
  it("asks once more, as a busy service says the same", () => {
    const web = new FakeRecogniser();
    const { clock, listener } = listening(web);
    web.end("not-allowed");
    expect(listener.state).toMatchObject({ is: "waiting", trouble: { reason: "not-allowed" } });
    clock.advance(RETRY_REFUSED_MS);
    expect(web.starts).toBe(2);
    web.listen();
    expect(listener.state).toEqual({ is: "listening", kind: "web" });
  });

  it("asks once more each time, where it heard since the last", () => {
    const web = new FakeRecogniser();
    const { clock, listener } = listening(web);
    for (let time = 0; time < 3; time++) {
      web.end("not-allowed");
      clock.advance(RETRY_REFUSED_MS);
      web.listen();
      clock.advance(3_600_000);
    }
    expect(listener.state).toEqual({ is: "listening", kind: "web" });
  });

  it("stops after the second, until the angler asks again", () => {
    const web = new FakeRecogniser();
    const { clock, page, listener } = listening(web);
    web.end("not-allowed");
    clock.advance(RETRY_REFUSED_MS);
    web.end("not-allowed");
    expect(listener.state).toMatchObject({ is: "refused", trouble: { reason: "not-allowed" } });
    page.goOnline();
    clock.advance(3_600_000);
    expect(web.starts).toBe(2);
    expect(clock.pending).toBe(0);
    listener.start();
    expect(web.starts).toBe(3);
    web.end("not-allowed");
    expect(listener.state).toMatchObject({ is: "waiting" });
  });

  it.each(["service-off", "language"] as const)("stops at once at %s", (reason) => {
    const web = new FakeRecogniser();
    const { clock, listener } = listening(web);
    web.end(reason);
    clock.advance(3_600_000);
    expect(web.starts).toBe(1);
    expect(listener.state).toMatchObject({ is: "refused", kind: "web", trouble: { reason } });
  });

  it("says so when there is nothing to hear with", () => {
    const { listener } = listening();
    expect(listener.state).toMatchObject({ is: "unavailable", trouble: { reason: "unsupported" } });
    const web = new FakeRecogniser();
    const other = listening(web);
    web.end("unsupported");
    expect(other.listener.state).toMatchObject({ is: "unavailable" });
  });
});

describe("holding", () => {
  it("stops while the device speaks and for a second after", () => {
    const web = new FakeRecogniser();
    const { clock, listener, states } = listening(web);
    web.listen();
    clock.advance(5_000);
    listener.hold();
    expect(web.running).toBe(false);
    expect(listener.state).toEqual({ is: "held", because: "speaking" });
    clock.advance(2_000);
    listener.release();
    clock.advance(ECHO_MS - 1);
    expect(web.running).toBe(false);
    clock.advance(1);
    expect(web.running).toBe(true);
    expect(states.filter(({ is }) => is === "held")).toHaveLength(1);
  });

  it("keeps words begun before the device spoke and drops its own voice", () => {
    const web = new FakeRecogniser();
    web.endsOnStop = false;
    const { clock, listener, heard } = listening(web);
    web.listen();
    clock.advance(5_000);
    const begun = clock.now() - 700;
    listener.hold();
    web.say("ten centimetres shallower", begun);
    clock.advance(300);
    web.ears?.onInterim("fish two");
    web.say("fish two pounds", clock.now());
    const amid = clock.now();
    clock.advance(300);
    listener.hold();
    web.say("of two voices the first", amid);
    expect(heard).toEqual(["ten centimetres shallower"]);
  });

  it("shows words as they come, but not the device's own", () => {
    const web = new FakeRecogniser();
    web.endsOnStop = false;
    const { listener, heard } = listening(web);
    web.listen();
    web.ears?.onInterim("fish two");
    listener.hold();
    web.ears?.onInterim("two pounds");
    expect(heard).toEqual(["fish two …"]);
  });

  it("does not start before the run told to stop has ended", () => {
    const web = new FakeRecogniser();
    web.endsOnStop = false;
    const { clock, listener } = listening(web);
    web.listen();
    listener.hold();
    listener.release();
    clock.advance(ECHO_MS);
    expect(web.stops).toBe(1);
    expect(web.starts).toBe(1);
    expect(listener.state).toEqual({ is: "starting", kind: "web" });
    web.end();
    expect(web.starts).toBe(2);
  });

  it("hears nothing until the last of two that speak at once has ended", () => {
    const web = new FakeRecogniser();
    const { clock, listener } = listening(web);
    web.listen();
    listener.hold();
    clock.advance(1_000);
    listener.hold();
    listener.release();
    clock.advance(10_000);
    expect(web.running).toBe(false);
    listener.release();
    clock.advance(ECHO_MS);
    expect(web.running).toBe(true);
  });

  it("does not count being stopped before it heard as a failure", () => {
    const web = new FakeRecogniser();
    const { clock, listener } = listening(web);
    listener.hold();
    listener.release();
    clock.advance(ECHO_MS);
    expect(web.starts).toBe(2);
  });

  it("lets go of the microphone while the page is hidden and retries at once when shown", () => {
    const web = new FakeRecogniser();
    const { clock, page, listener } = listening(web);
    web.listen();
    clock.advance(5_000);
    web.end("network");
    page.setHidden(true);
    expect(listener.state).toEqual({ is: "held", because: "hidden" });
    clock.advance(3_600_000);
    expect(web.starts).toBe(1);
    page.setHidden(false);
    expect(web.starts).toBe(2);
    clock.advance(BETWEEN_STARTS_MS);
    web.end("network");
    expect(listener.state).toMatchObject({ is: "waiting" });
    page.setHidden(true);
    page.setHidden(false);
    expect(web.starts).toBe(3);
  });
});

describe("stopping", () => {
  it("tells when the ears are free: those told to stop still deliver", async () => {
    const web = new FakeRecogniser();
    const { listener } = listening(web);
    web.listen();
    web.endsOnStop = false;
    listener.stop();
    let isFree = false;
    const free = listener.ended().then(() => {
      isFree = true;
    });
    await Promise.resolve();
    expect(isFree).toBe(false);
    web.end();
    await free;
    await listener.ended();
  });

  it("delivers what was said, and leaves no timer and no watcher behind", () => {
    const web = new FakeRecogniser();
    web.endsOnStop = false;
    const { clock, page, heard, listener } = listening(web);
    web.listen();
    clock.advance(2_000);
    listener.stop();
    expect(listener.state).toEqual({ is: "off" });
    web.say("all out", clock.now() - 500);
    web.end();
    clock.advance(60_000);
    expect(heard).toEqual(["all out"]);
    expect(web.starts).toBe(1);
    expect(clock.pending).toBe(0);
    expect(page.watchers).toBe(0);
  });

  it("can be started again before the last run has ended", () => {
    const web = new FakeRecogniser();
    web.endsOnStop = false;
    const { clock, listener } = listening(web);
    clock.advance(2_000);
    listener.stop();
    listener.start();
    expect(listener.state).toEqual({ is: "starting", kind: "web" });
    web.end();
    expect(web.starts).toBe(2);
  });
});

describe("with a second recogniser", () => {
  function pair() {
    const web = new FakeRecogniser("web");
    const offline = new FakeRecogniser("offline");
    return { web, offline, ...listening(web, offline) };
  }

  it("falls over to it when the network fails, and never runs both", () => {
    const { web, offline, clock, listener } = pair();
    web.listen();
    clock.advance(5_000);
    web.end("network");
    expect([web.running, offline.running]).toEqual([false, true]);
    offline.listen();
    expect(listener.state).toEqual({ is: "listening", kind: "offline" });
  });

  it("takes what the first delivers before the second starts", () => {
    const { web, offline, clock, heard } = pair();
    web.endsOnStop = false;
    web.listen();
    clock.advance(5_000);
    web.say("bite", clock.now());
    web.ears?.onTrouble({ reason: "network", detail: "as told" });
    web.say("fish two pounds", clock.now() - 900);
    expect(offline.running).toBe(false);
    web.end();
    expect(offline.running).toBe(true);
    offline.listen();
    offline.say("feeding", clock.now());
    expect(heard).toEqual(["bite", "fish two pounds", "feeding"]);
  });

  it("starts the second though the first has only just started", () => {
    const { web, offline } = pair();
    web.end("network");
    expect(offline.running).toBe(true);
  });

  it("goes back between two utterances, once the first has been away long enough", () => {
    const { web, offline, clock } = pair();
    clock.advance(BETWEEN_STARTS_MS);
    web.end("network");
    offline.listen();
    clock.advance(AWAY_MS - 500);
    offline.ears?.onInterim("fish two");
    clock.advance(PAUSE_MS - 1);
    expect([web.running, offline.running]).toEqual([false, true]);
    offline.say("fish two pounds", clock.now());
    expect([web.running, offline.running]).toEqual([true, false]);
  });

  it("goes back in a silence", () => {
    const { web, offline, clock } = pair();
    web.end("network");
    offline.listen();
    clock.advance(AWAY_MS - 1);
    expect(web.running).toBe(false);
    clock.advance(1);
    expect(web.running).toBe(true);
  });

  it("goes back when the network comes back, but not before it has stayed a while", () => {
    const { web, offline, clock, page } = pair();
    offline.endsOnStop = false;
    web.end("network");
    clock.advance(BETWEEN_STARTS_MS);
    page.goOnline();
    clock.advance(STAY_MS - BETWEEN_STARTS_MS - 1);
    expect(offline.stops).toBe(0);
    clock.advance(1);
    expect(offline.stops).toBe(1);
    expect([web.running, offline.running]).toEqual([false, true]);
    offline.end();
    expect([web.running, offline.running]).toEqual([true, false]);
  });

  it("stays away longer each time it fails again with nothing heard in between", () => {
    const { web, offline, clock } = pair();
    web.end("network");
    for (const away of [AWAY_MS, 2 * AWAY_MS, 4 * AWAY_MS]) {
      clock.advance(away - 1);
      expect(offline.running).toBe(true);
      clock.advance(1);
      expect(web.running).toBe(true);
      web.listen();
      web.end("network");
    }
    expect(4 * AWAY_MS).toBeLessThan(LONGEST_AWAY_MS);
    clock.advance(8 * AWAY_MS);
    web.listen();
    web.say("bite", clock.now());
    web.end("network");
    clock.advance(AWAY_MS);
    expect(web.running).toBe(true);
  });

  it("goes back though the second was started anew a moment ago", () => {
    const { web, offline, clock } = pair();
    web.end("network");
    offline.listen();
    clock.advance(AWAY_MS - BETWEEN_STARTS_MS);
    offline.end();
    expect(offline.starts).toBe(2);
    offline.listen();
    clock.advance(BETWEEN_STARTS_MS);
    expect(web.running).toBe(true);
  });

  it("is not tossed to and fro by a signal that comes and goes", () => {
    const { web, offline, clock, page } = pair();
    let changes = 0;
    for (let second = 0; second < 3_600; second++) {
      const before = web.running;
      if (second % 20 === 0) page.goOffline();
      if (second % 20 === 10) page.goOnline();
      if (web.running && !page.online) web.end("network");
      clock.advance(1_000);
      if (before !== web.running) changes++;
    }
    expect(offline.starts).toBeGreaterThan(10);
    expect(changes).toBeLessThanOrEqual(2 * 60);
  });

  it("keeps retrying the second while the first is away", () => {
    const { web, offline, clock } = pair();
    clock.advance(BETWEEN_STARTS_MS);
    web.end("network");
    offline.listen();
    clock.advance(BETWEEN_STARTS_MS);
    offline.end("stalled");
    clock.advance(FIRST_WAIT_MS);
    expect(offline.starts).toBe(2);
    expect(web.starts).toBe(1);
  });

  it("goes back to the first at once when the second is refused, however long it was to be away", () => {
    const { web, offline, clock, listener } = pair();
    clock.advance(BETWEEN_STARTS_MS);
    web.end("network");
    offline.listen();
    clock.advance(BETWEEN_STARTS_MS);
    offline.end("not-allowed");
    clock.advance(RETRY_REFUSED_MS);
    offline.end("not-allowed");
    expect(web.running).toBe(true);
    web.end("not-allowed");
    clock.advance(RETRY_REFUSED_MS);
    web.end("not-allowed");
    expect(listener.state).toMatchObject({ is: "refused", trouble: { reason: "not-allowed" } });
  });

  it("stays with the second when the first is refused", () => {
    const { web, offline, clock, listener } = pair();
    web.end("service-off");
    clock.advance(BETWEEN_STARTS_MS);
    offline.listen();
    expect(listener.state).toEqual({ is: "listening", kind: "offline" });
    offline.end("unsupported");
    expect(listener.state).toMatchObject({ is: "refused", kind: "web" });
  });
});

describe("the order of the recognisers", () => {
  function ranked(...first: RecogniserKind[]) {
    const web = new FakeRecogniser("web");
    const offline = new FakeRecogniser("offline");
    const order = { now: first };
    const clock = new FakeClock();
    const page = new FakePage();
    const heard: string[] = [];
    const listener = new Listener({
      recognisers: [web, offline],
      rank: () => order.now,
      clock,
      page,
      events: {
        onState: () => {},
        onInterim: () => {},
        onUtterance: ({ alternatives }) => heard.push(alternatives[0]?.text ?? ""),
        onTrouble: () => {},
      },
    });
    listener.start();
    return { web, offline, order, clock, page, listener, heard };
  }

  it("leaves out one that may not hear, though the other fails", () => {
    const { web, offline, clock } = ranked("web");
    web.end("network");
    clock.advance(FIRST_WAIT_MS);
    expect([web.starts, offline.starts]).toEqual([2, 0]);
  });

  it("changes at once when the angler chooses, and what was said so far is delivered", () => {
    const { web, offline, order, clock, listener, heard } = ranked("web");
    web.endsOnStop = false;
    web.listen();
    web.ears?.onInterim("skimmer ten");
    order.now = ["offline"];
    listener.reconsider();
    web.say("skimmer ten ounces", clock.now());
    web.end();
    expect([web.running, offline.running, heard]).toEqual([false, true, ["skimmer ten ounces"]]);
  });

  it("changes at once though the other may still hear, and however lately it began", () => {
    const { web, offline, order, listener } = ranked("web");
    web.listen();
    web.ears?.onInterim("skimmer ten");
    order.now = ["offline", "web"];
    listener.reconsider();
    expect([web.running, offline.running]).toEqual([false, true]);
  });

  it("changes when the network is gone, though nothing has failed yet, between utterances", () => {
    const { web, offline, order, clock, page } = ranked("web", "offline");
    web.listen();
    web.ears?.onInterim("skimmer ten");
    order.now = ["offline", "web"];
    page.goOffline();
    expect(web.running).toBe(true);
    clock.advance(PAUSE_MS);
    expect([web.running, offline.running]).toEqual([false, true]);
  });

  it("tries one again that was refused, once it can be had", () => {
    const { offline, order, clock, listener } = ranked("offline");
    offline.end("not-kept");
    expect(listener.state).toMatchObject({ is: "refused", trouble: { reason: "not-kept" } });
    order.now = ["offline"];
    clock.advance(BETWEEN_STARTS_MS);
    listener.reconsider();
    expect(offline.running).toBe(true);
  });

  it("does not start anything where listening is not wanted", () => {
    const { web, offline, order, listener } = ranked("web");
    listener.stop();
    order.now = ["offline"];
    listener.reconsider();
    expect([web.running, offline.running]).toEqual([false, false]);
    expect(listener.state).toEqual({ is: "off" });
  });
});
