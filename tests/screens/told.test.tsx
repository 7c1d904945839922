import { render, screen } from "@testing-library/preact";
import { expect, test } from "vitest";
import type { LogEvent } from "../../src/log/event.ts";
import { foldSession } from "../../src/log/fold.ts";
import { Told } from "../../src/screens/shared/told.tsx";
import { summarise } from "../../src/share/summary.ts";
import { entry } from "../log/session-script.ts";

const STYLES = { weight: "lb-oz", length: "cm" } as const;

/** What a link shows that holds so many fish. */
function tell(fish: number): void {
  const events = Array.from(
    { length: fish },
    (_, place): LogEvent =>
      entry(place + 1, { kind: "fish", species: "roach", weightG: 100 }, { session: "s" }),
  );
  const session = foldSession("s", events);
  const now = (events.at(-1)?.at ?? 0) + 1000;
  const shared = { session, now, summary: summarise(session, now) };
  render(<Told shared={shared} styles={STYLES} />);
}

test("a link's fish are all told, up to as many as are read", () => {
  tell(300);
  expect(screen.getAllByRole("rowheader")).toHaveLength(300);
  expect(screen.queryByText(/^More fish/)).toBeNull();
});

test("a link that is full of fish stops no phone", () => {
  tell(301);
  expect(screen.getAllByRole("rowheader")).toHaveLength(300);
  screen.getByText("More fish are in the link; not shown here: 1.");
});
