/** From what happened to what the log was told: some of it misjudged, misheard or missed. */
import { GRAMS_PER_OUNCE, GRAMS_PER_POUND } from "../../grammar/quantity/units.ts";
import type { EntryStatement, EventBody, LogEvent } from "../../src/log/event.ts";
import { at } from "../analysis/fixtures/session.ts";
import type { Happening, Landed } from "./fishing.ts";
import type { Random } from "./random.ts";

export interface Hearing {
  /** Share of phrases of which nothing gets into the log. */
  missed: number;
  /** Share of fish of which no weight is said; half of them are measured instead. */
  unsaid: number;
}

/** Share of fish with a length beside the weight. */
const WITH_BOTH = 0.1;

/** Share of weights that are misheard and put right. */
const MISHEARD = 0.05;

/** Ounces up to a pound, quarters of a pound above. */
function rounded(grams: number): number {
  const step = grams < GRAMS_PER_POUND ? GRAMS_PER_OUNCE : GRAMS_PER_POUND / 4;
  return step * Math.max(1, Math.round(grams / step));
}

function fishSaid(fish: Landed, unsaid: number, random: Random): EntryStatement {
  const { species } = fish;
  const weightG = rounded(fish.judgedG);
  const lengthMm = 10 * Math.round(fish.lengthMm / 10);
  const how = random.between(0, 1);
  if (how < unsaid / 2) return { kind: "fish", species };
  if (how < unsaid) return { kind: "fish", species, lengthMm };
  const isMeasured = random.happens(WITH_BOTH);
  return { kind: "fish", species, weightG, ...(isMeasured ? { lengthMm } : {}) };
}

function said(happening: Happening, unsaid: number, random: Random): EntryStatement {
  switch (happening.what) {
    case "start":
    case "stop":
    case "pause":
    case "resume":
      return { kind: "session", act: happening.what };
    case "move":
      return { kind: "change", rig: happening.place.rig, depthMm: happening.place.depthMm };
    case "drop":
    case "net":
      return { kind: happening.what };
    case "bite":
    case "missed":
      return { kind: "sign", sort: happening.what };
    case "lost":
      return { kind: "loss", cause: "pulled" };
    case "landed":
      return fishSaid(happening.fish, unsaid, random);
  }
}

/** The events of a day, numbered and timed as the log would. `minute` is when each was told. */
export function tell(
  happenings: readonly Happening[],
  { missed, unsaid }: Hearing,
  random: Random,
): LogEvent[] {
  const events: LogEvent[] = [];
  const add = (minute: number, body: EventBody): string => {
    const seq = events.length + 1;
    const id = `e${seq}`;
    const head = { v: 1, id, session: "s", device: "d", seq } as const;
    events.push({ ...head, at: at(minute), verdict: "log", body });
    return id;
  };
  for (const happening of happenings) {
    const statement = said(happening, unsaid, random);
    if (random.happens(missed)) continue;
    const { minute } = happening;
    if (statement.kind === "fish" && statement.weightG && random.happens(MISHEARD)) {
      const { weightG } = statement;
      const target = add(minute, {
        kind: "entry",
        statement: { ...statement, weightG: 9 * weightG },
      });
      add(minute, { kind: "amend", target, set: { weightG } });
    } else add(minute, { kind: "entry", statement });
  }
  return events;
}
