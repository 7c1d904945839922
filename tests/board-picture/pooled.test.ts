import { expect, test } from "vitest";
import { bestOver } from "../../src/analysis/seasons/over-sessions.ts";
import { foldSession } from "../../src/log/fold.ts";
import { act, at, change, fish, Phones } from "./script.ts";

/** Fishes `count` fish evenly over an hour at a depth. */
function fishHour(
  phones: Phones,
  seat: string,
  fromMinute: number,
  depthMm: number,
  count: number,
) {
  const events = [phones.say(seat, fromMinute, change({ depthMm, bait: "pellet" }))];
  for (let n = 1; n <= count; n += 1)
    events.push(phones.say(seat, fromMinute + (60 * n) / (count + 1), fish(300)));
  return events;
}

test("what is best over all pegs is what the sums over sessions say, pegs for sessions", () => {
  const phones = new Phones();
  const sessions = ["peg-1", "peg-2", "peg-3"].map((seat, place) => {
    const events = [
      phones.say(seat, 0, act("start")),
      ...fishHour(phones, seat, 0, 300, 12 + place),
      ...fishHour(phones, seat, 60, 900, 2),
      phones.say(seat, 120, act("stop")),
    ];
    return foldSession(`session-of-${seat}`, events);
  });
  const { depth } = phones.view(120).pooled;
  const { verdict, ranked } = bestOver("depth", sessions, at(120));
  expect(depth.verdict).toBe("clear");
  expect(depth).toEqual({ verdict, ranked });
  expect(depth.ranked[0]).toMatchObject({ level: 300, fish: 39, sessions: 3, hours: 3 });
});

test("an hour that was lucky on one peg is drawn towards the rest", () => {
  const phones = new Phones();
  phones.say("peg-1", 0, act("start"));
  fishHour(phones, "peg-1", 0, 300, 6);
  for (const seat of ["peg-2", "peg-3", "peg-4"]) {
    phones.say(seat, 0, act("start"));
    fishHour(phones, seat, 0, 900, 2);
  }
  const lucky = phones.view(60).pooled.depth.ranked.find(({ level }) => level === 300);
  expect(lucky?.fishPerHour).toMatchObject({ tells: true });
  if (lucky?.fishPerHour.tells) expect(lucky.fishPerHour.value).toBeLessThan(5.5);
});

test("too few fish rank nothing, and one bait alone is held against none", () => {
  const phones = new Phones();
  phones.say("peg-1", 0, act("start"));
  fishHour(phones, "peg-1", 0, 300, 3);
  expect(phones.view(60).pooled.depth.verdict).toBe("too-few");
  fishHour(phones, "peg-1", 60, 300, 6);
  const { bait, rig } = phones.view(120).pooled;
  expect(bait).toMatchObject({ verdict: "alone", ranked: [{ level: "pellet", fish: 9 }] });
  expect(rig).toEqual({ verdict: "too-few", ranked: [] });
});

test("only the first few levels are named", () => {
  const phones = new Phones();
  phones.say("peg-1", 0, act("start"));
  for (let n = 0; n < 8; n += 1) fishHour(phones, "peg-1", 60 * n, 300 + 200 * n, 3);
  expect(phones.view(480).pooled.depth.ranked).toHaveLength(5);
});
