import { expect, test } from "vitest";
import { BoardPicture } from "../../src/board/picture/picture.ts";
import { act, change, fish, Phones } from "./script.ts";

/** A fish a minute of which every look is counted, after each of which the board is looked at. */
function looksByMessage(messages: number): number[] {
  let looks = 0;
  const counted = <T extends object>(target: T): T =>
    new Proxy(target, {
      get(of, key, receiver) {
        looks += 1;
        return Reflect.get(of, key, receiver);
      },
    });
  const phones = new Phones();
  phones.say("peg-1", 0, act("start"));
  phones.say("peg-1", 0, change({ depthMm: 600, bait: "pellet", rig: "1" }));
  for (let n = 1; n <= messages; n += 1) phones.say("peg-1", n, counted(fish(300)));
  const picture = new BoardPicture();
  return phones.sent.map(([from, message]) => {
    looks = 0;
    picture.receive(from, message);
    picture.view(from.at);
    return looks;
  });
}

test("a message in its turn costs the same after an hour and after ten", () => {
  const looks = looksByMessage(600);
  expect(looks[60]).toBeGreaterThan(0);
  expect(looks[600]).toBe(looks[60]);
});
