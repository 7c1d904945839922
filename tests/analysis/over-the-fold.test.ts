import { describe, expect, test } from "vitest";
import { bestIn } from "../../src/analysis/best.ts";
import { exposuresBy, FACTORS } from "../../src/analysis/effort/exposure.ts";
import { fishedStretches, lengthOf } from "../../src/analysis/effort/stretches.ts";
import { loadsOf } from "../../src/analysis/weights/loads.ts";
import type { EntryStatement, EventBody, LogEvent } from "../../src/log/event.ts";
import { SessionFold } from "../../src/log/fold.ts";
import type { Session } from "../../src/log/session.ts";
import { at, MINUTE } from "./fixtures/session.ts";

type Line = readonly [minute: number, said: EntryStatement | Exclude<EventBody, { kind: "entry" }>];

const BODIES = ["amend", "withdraw", "weigh", "plan"];

/** A session as the log makes it; the id of a line is "l" and its place. */
function folded(lines: readonly Line[]): Session {
  const events = lines.map(([minute, said], place): LogEvent => {
    const body = BODIES.includes(said.kind) ? said : { kind: "entry", statement: said };
    return {
      v: 1,
      id: `l${place}`,
      session: "s",
      device: "d",
      seq: place + 1,
      at: at(minute),
      verdict: "log",
      body: body as EventBody,
    };
  });
  return new SessionFold("s").addAll(events).session;
}

const fish: EntryStatement = { kind: "fish", weightG: 500 };

describe("over a session as the log folds it", () => {
  const lines: Line[] = [
    [0, { kind: "session", act: "start" }],
    [0, { kind: "change", depthMm: 400, rig: "1" }],
    [10, fish],
    [20, { kind: "session", act: "pause" }],
    [25, fish],
    [30, { kind: "session", act: "resume" }],
    [40, { kind: "change", depthMm: 600 }],
    [50, { kind: "fish", count: 2 }],
    [60, { kind: "session", act: "stop" }],
    [62, fish],
    [70, { kind: "session", act: "resume" }],
    [75, { kind: "net" }],
    [80, fish],
    [90, { kind: "session", act: "stop" }],
  ];

  test("breaks are no fishing: a pause that a fish ended, and a stop that was taken up again", () => {
    expect(lengthOf(fishedStretches(folded(lines), at(500))) / MINUTE).toBe(75);
  });

  test.each(FACTORS)("fish and hours by %s are the session's", (factor) => {
    const session = folded(lines);
    const levels = exposuresBy(factor, session, at(500));
    expect(levels.reduce((total, level) => total + level.fish, 0)).toBe(session.count);
    expect(levels.reduce((total, level) => total + level.hours, 0)).toBeCloseTo(75 / 60, 9);
  });

  test("a corrected change carries the fish after it with it", () => {
    const amended = folded([
      ...lines,
      [91, { kind: "amend", target: "l6", set: { depthMm: 900 } }],
    ]);
    const byDepth = exposuresBy("depth", amended, at(500)).filter(({ hours }) => hours > 0);
    expect(byDepth.map(({ level, fish }) => [level, fish])).toEqual([
      [400, 2],
      [900, 4],
    ]);
  });

  test("nets agree with the log's own sums", () => {
    const session = folded([...lines, [92, { kind: "weigh", net: 2, weightG: 520 }]]);
    expect(loadsOf(session).map(({ net, fish, weighedG }) => [net, fish, weighedG])).toEqual([
      [1, 5, undefined],
      [2, 1, 520],
    ]);
    const said = folded(
      lines.map(([minute, body]): Line => [minute, body.kind === "fish" ? fish : body]),
    );
    expect(loadsOf(said).map(({ spokenG }) => spokenG)).toEqual(
      said.nets.map(({ spokenG }) => spokenG),
    );
  });

  test("taking every fish back leaves too few to tell", () => {
    const targets = lines.flatMap(([, { kind }], place) => (kind === "fish" ? [`l${place}`] : []));
    const emptied = folded([...lines, [93, { kind: "withdraw", targets }]]);
    expect(emptied.count).toBe(0);
    expect(bestIn("depth", emptied, at(500)).verdict).toBe("too-few");
  });

  test("a session that only a first fish starts has no time before it", () => {
    const session = folded([
      [-30, { kind: "change", depthMm: 400 }],
      [0, fish],
      [30, fish],
    ]);
    const [level] = exposuresBy("depth", session, at(60));
    expect(level).toMatchObject({ level: 400, hours: 1, fish: 2 });
  });
});
