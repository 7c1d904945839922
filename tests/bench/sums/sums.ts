/** What each sum costs as a session grows, and what one more event does. */
import { Running } from "../../../src/analysis/running.ts";
import type { LogEvent } from "../../../src/log/event.ts";
import { SessionFold } from "../../../src/log/fold.ts";
import { longSession, looksOf, SUMS } from "../../analysis/fixtures/long-session.ts";
import { type Figures, type Measured, rounded, type Table } from "../part.ts";
import { growth, median, timeOf } from "../times.ts";

export const title = "Sums";

const SIZES = [500, 1000, 2000, 4000, 8000];
/** The quickest of them counts: the others were kept waiting by other programs. */
const ROUNDS = 15;

/** How often a sum looks at an entry, of each entry: alike on any machine. */
export function looks(): Figures {
  const [small, large] = [1000, 4000];
  return Object.fromEntries(
    Object.entries(SUMS).flatMap(([name, sum]) => {
      const counts = [small, large].map((size) => looksOf(size, sum));
      return [
        [`${name}: looks at each of ${large} entries`, (counts[1] ?? Number.NaN) / large],
        [`${name}: growth of its looks, exponent`, growth([small, large], counts)],
      ];
    }),
  );
}

function overSizes(): Table {
  const sessions = SIZES.map(longSession);
  const rows = Object.entries(SUMS).map(([name, sum]) => {
    for (const session of sessions) sum(session);
    const times = sessions.map((session) =>
      Math.min(...Array.from({ length: ROUNDS }, () => timeOf(() => sum(session)))),
    );
    return [name, ...times.map((ms) => rounded(ms, 2)), rounded(growth(SIZES, times))];
  });
  return {
    caption: `Milliseconds a sum, by entries of the session; the quickest of ${ROUNDS}. The exponent b of cost = a · entries^b is fitted to all sizes: 1 is in proportion.`,
    head: ["sum", ...SIZES.map(String), "exponent"],
    rows,
  };
}

/** The events of a session as its log has them. */
export const eventsOf = (size: number): LogEvent[] =>
  longSession(size).entries.map(({ id, at, statement }, place) => ({
    ...{ v: 1, id, session: "long", device: "one", seq: place + 1, at, verdict: "log" },
    body: { kind: "entry", statement },
  }));

const MORE = 200;

/** One more event on a session of so many: folded in, and carried on in the running sums. */
function oneMore(size: number): number {
  const events = eventsOf(size + MORE);
  const fold = new SessionFold("long").addAll(events.slice(0, size));
  const running = new Running().follow(fold.session);
  const times = events
    .slice(size)
    .map((event) => timeOf(() => running.follow(fold.addAll([event]).session)));
  return median(times);
}

function live(): Table {
  oneMore(500);
  const times = SIZES.map(oneMore);
  return {
    caption: `Milliseconds for one more event, folded in and carried on in the sums of Live and the warnings; medians of ${MORE}:`,
    head: ["", ...SIZES.map(String), "exponent"],
    rows: [["one more event", ...times.map((ms) => rounded(ms, 4)), rounded(growth(SIZES, times))]],
  };
}

export const measure = (): Measured => ({
  tables: [overSizes(), live()],
  figures: looks(),
});
