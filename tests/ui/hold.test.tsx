import { act, fireEvent, render, screen } from "@testing-library/preact";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { HoldButton } from "../../src/ui/hold-button.tsx";

let presses: number;

const press = () => {
  presses += 1;
};

beforeEach(() => {
  presses = 0;
  vi.useFakeTimers();
  render(
    <HoldButton label="More" onPress={press}>
      +
    </HoldButton>,
  );
});
afterEach(() => vi.useRealTimers());

const button = () => screen.getByRole("button", { name: "More" });

test("a touch is one press, and so is a click without a pointer", () => {
  fireEvent.pointerDown(button());
  fireEvent.pointerUp(button());
  fireEvent.click(button());
  expect(presses).toBe(1);
  fireEvent.click(button());
  expect(presses).toBe(2);
});

test("held, it presses on until it is let go, and the click at the end is none", () => {
  fireEvent.pointerDown(button());
  for (let step = 0; step < 20; step += 1) act(() => void vi.advanceTimersToNextTimer());
  expect(presses).toBe(20);
  fireEvent.pointerUp(button());
  fireEvent.click(button());
  vi.runAllTimers();
  expect(presses).toBe(20);
});

test.each(["pointerLeave", "pointerCancel"] as const)(
  "a finger that slides away (%s) ends it",
  (end) => {
    fireEvent.pointerDown(button());
    fireEvent[end](button());
    vi.runAllTimers();
    expect(presses).toBe(0);
  },
);

test("taken off the screen while it is held, it stops", () => {
  fireEvent.pointerDown(button());
  act(() => void vi.advanceTimersToNextTimer());
  const before = presses;
  render(<p />, { container: button().parentElement as HTMLElement });
  vi.runAllTimers();
  expect(presses).toBe(before);
});
