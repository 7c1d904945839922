/** A thumb that counts. Every touch is what a phone sends: pointer down, pointer up, click. */
import { act, fireEvent, screen } from "@testing-library/preact";
import { vi } from "vitest";

export class Thumb {
  touches = 0;

  /** A button, a choice or a tick, by its name. */
  async touch(name: string | RegExp): Promise<void> {
    const element = find(name);
    await this.#down(element);
    await this.#up(element);
  }

  /** Keeps a stepper's button down for so many steps: one touch. */
  async hold(name: string, steps: number): Promise<void> {
    const element = find(name);
    vi.useFakeTimers({ toFake: ["setTimeout", "clearTimeout"] });
    await this.#down(element);
    // Longer than any wait between two steps; the screen is drawn anew after each.
    for (let step = 0; step < steps; step += 1) await act(() => void vi.advanceTimersToNextTimer());
    vi.useRealTimers();
    await this.#up(element);
  }

  async #down(element: HTMLElement): Promise<void> {
    if (element.matches(":disabled")) throw new Error(`${element.textContent} cannot be touched`);
    this.touches += 1;
    await act(() => void fireEvent.pointerDown(element));
  }

  async #up(element: HTMLElement): Promise<void> {
    await act(() => {
      fireEvent.pointerUp(element);
      fireEvent.click(element);
    });
  }
}

function find(name: string | RegExp): HTMLElement {
  const roles = ["button", "radio", "checkbox"] as const;
  const [element, another] = roles.flatMap((role) => screen.queryAllByRole(role, { name }));
  if (!element || another) throw new Error(`${another ? "more than one" : "no"} ${name} in sight`);
  return element;
}
