import fc from "fast-check";
import { expect, test } from "vitest";
import type { Message } from "../../src/board/message.ts";
import { BoardPicture } from "../../src/board/picture/picture.ts";
import { patched, Teller } from "../../src/board/picture/teller.ts";
import type { BoardView } from "../../src/board/picture/view.ts";
import type { EntryStatement, EventBody } from "../../src/log/event.ts";
import { at, pictureOf, type Sent, START } from "./script.ts";

/** Few names and ids, so that messages meet, correct and contradict each other. */
const SIZE = 40;
const SPAN_MS = 4 * 3_600_000;
const seat = fc.constantFrom("peg-1", "peg-2", "peg-3");
const anId = fc.nat(SIZE).map((n) => `e${n}`);
const moment = fc.integer({ min: START, max: START + SPAN_MS });

const statement: fc.Arbitrary<EntryStatement> = fc.oneof(
  fc.record(
    {
      kind: fc.constant("fish" as const),
      weightG: fc.integer({ min: 1, max: 5000 }),
      count: fc.integer({ min: 1, max: 3 }),
    },
    { requiredKeys: ["kind"] },
  ),
  fc.record(
    {
      kind: fc.constant("change" as const),
      rig: fc.constantFrom("1", "2"),
      depthMm: fc.constantFrom(300, 620, 1200),
      bait: fc.constantFrom("maggot" as const, "pellet" as const),
    },
    { requiredKeys: ["kind"] },
  ),
  fc.record({
    kind: fc.constant("session" as const),
    act: fc.constantFrom("start", "pause", "resume", "stop"),
  }),
);

const body: fc.Arbitrary<EventBody> = fc.oneof(
  { weight: 8, arbitrary: fc.record({ kind: fc.constant("entry" as const), statement }) },
  fc.record({
    kind: fc.constant("withdraw" as const),
    targets: fc.array(anId, { maxLength: 2 }),
  }),
  fc.record({ kind: fc.constant("replace" as const), target: anId, statement }),
  fc.record({
    kind: fc.constant("weigh" as const),
    net: fc.constantFrom(1, 2),
    weightG: fc.integer({ min: 1, max: 9000 }),
  }),
  fc.record({
    kind: fc.constant("plan" as const),
    plan: fc.record({ method: fc.constantFrom("match" as const, "practice" as const) }),
  }),
);

const section = fc.constantFrom("A", "B");

const kindOfMessage = fc.oneof(
  { weight: 8, arbitrary: fc.record({ body, session: fc.constantFrom("s1", "s2") }) },
  fc.record({
    standing: fc.record(
      { name: fc.constantFrom("Ada", "Bo"), section },
      { requiredKeys: ["name"] },
    ),
  }),
  fc.constant("damaged" as const),
);

/** What arrived, in places of its own; sent some seconds to hours before it was taken. */
const messages: fc.Arbitrary<Sent[]> = fc
  .array(fc.record({ seat, said: moment, sentAt: moment, takenAt: moment, kind: kindOfMessage }), {
    maxLength: SIZE,
  })
  .map((list) =>
    list.map(({ seat, said, sentAt, takenAt, kind }, n): Sent => {
      const from = { seat, subject: `pegscribe.osier.s.${seat}`, place: n + 1, at: takenAt };
      return [from, messageOf(n, seat, said, sentAt, kind)];
    }),
  );

function messageOf(
  n: number,
  seat: string,
  said: number,
  sentAt: number,
  kind: typeof kindOfMessage extends fc.Arbitrary<infer T> ? T : never,
): Message | undefined {
  if (kind === "damaged") return undefined;
  if ("standing" in kind) {
    const standing = kind.standing as { name: string; section?: string };
    return { is: "standing", sentAt, session: "s1", standing };
  }
  const { body, session } = kind;
  const id = {
    v: 1 as const,
    id: `e${n}`,
    session: `${session}-${seat}`,
    device: seat,
    seq: n + 1,
  };
  return { is: "event", sentAt, event: { ...id, at: said, verdict: "log", body } };
}

const shuffled = messages.chain((list) =>
  fc.tuple(
    fc.constant(list),
    fc.shuffledSubarray(list, { minLength: list.length }),
    fc.subarray(list),
  ),
);

test("the same messages in any order, and some of them twice, give the same picture", () => {
  fc.assert(
    fc.property(shuffled, moment, ([list, mixed, again], now) => {
      expect(pictureOf([...mixed, ...again]).view(now)).toEqual(pictureOf(list).view(now));
    }),
    { numRuns: 500 },
  );
});

test("looked at after every message, it is the picture of the messages so far", () => {
  fc.assert(
    fc.property(shuffled, ([, mixed]) => {
      const picture = new BoardPicture();
      mixed.forEach((one, n) => {
        picture.receive(...one);
        expect(picture.view(at(300))).toEqual(pictureOf(mixed.slice(0, n + 1)).view(at(300)));
      });
    }),
    { numRuns: 100 },
  );
});

test("told in patches, it comes to the same view", () => {
  fc.assert(
    fc.property(shuffled, ([, mixed]) => {
      const picture = new BoardPicture();
      const teller = new Teller(picture);
      let shown: BoardView | undefined;
      mixed.forEach((one, n) => {
        picture.receive(...one);
        if (n % 3 === 0) shown = patched(shown, teller.tell(at(n)));
      });
      shown = patched(shown, teller.tell(at(500)));
      expect(shown).toEqual(picture.view(at(500)));
    }),
    { numRuns: 200 },
  );
});
