import { afterEach, beforeEach, vi } from "vitest";

/** In each of a file's tests time stands still until the test moves it on. */
export function stopTime(): void {
  beforeEach(() => {
    vi.useFakeTimers();
  });
  afterEach(() => {
    vi.useRealTimers();
  });
}
