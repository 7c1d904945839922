import { beforeEach, describe, expect, test } from "vitest";
import { Deafness } from "../../src/scribe/deafness.ts";
import type { ListenerState } from "../../src/speech/listener-state.ts";
import type { TroubleReason } from "../../src/speech/recogniser.ts";
import { FakeClock } from "../speech/fake-clock.ts";

let clock: FakeClock;
let told: TroubleReason[];
let deafness: Deafness;

beforeEach(() => {
  clock = new FakeClock();
  told = [];
  deafness = new Deafness(clock, (reason) => told.push(reason));
});

const LISTENING: ListenerState = { is: "listening", kind: "web" };
const refused = (reason: TroubleReason): ListenerState => ({
  is: "refused",
  kind: "web",
  trouble: { reason, detail: "as told" },
});
const waiting = (reason: TroubleReason, waitMs: number): ListenerState => ({
  is: "waiting",
  kind: "web",
  until: clock.now() + waitMs,
  trouble: { reason, detail: "as told" },
});

describe("that nothing is heard is told", () => {
  test("once, though its own voice and each new attempt come between", () => {
    deafness.follow(LISTENING);
    for (let attempt = 0; attempt < 5; attempt += 1) {
      deafness.follow(waiting("network", 1_000 * 2 ** attempt));
      deafness.follow({ is: "held", because: "speaking" });
      deafness.follow(LISTENING);
      clock.advance(5_000);
    }
    expect(told).toEqual(["network"]);
  });

  test("at once where what was said is lost, after some attempts where it mends itself", () => {
    deafness.follow(waiting("no-microphone", 1_000));
    expect(told).toEqual(["no-microphone"]);
    deafness.follow(waiting("stalled", 1_000));
    deafness.follow(waiting("stalled", 2_000));
    expect(told).toEqual(["no-microphone"]);
    deafness.follow(waiting("stalled", 4_000));
    expect(told).toEqual(["no-microphone", "stalled"]);
  });

  test("when hearing is refused, and when the refusal becomes another", () => {
    deafness.follow(refused("not-allowed"));
    deafness.follow(refused("not-allowed"));
    deafness.follow(refused("not-kept"));
    expect(told).toEqual(["not-allowed", "not-kept"]);
  });

  test("when there is nothing left to hear with", () => {
    deafness.follow({ is: "unavailable", trouble: { reason: "unsupported", detail: "as told" } });
    expect(told).toEqual(["unsupported"]);
  });

  test("again after a minute of hearing, and when the angler begins anew", () => {
    deafness.follow(waiting("network", 1_000));
    deafness.follow(LISTENING);
    clock.advance(60_000);
    deafness.follow(waiting("network", 1_000));
    expect(told).toEqual(["network", "network"]);
    deafness.forget();
    deafness.follow(waiting("network", 1_000));
    expect(told).toHaveLength(3);
  });
});
