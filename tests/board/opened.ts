import { onTestFinished } from "vitest";

/** What a test opens is closed when the test is over, however it ends. */
export function opened<T extends { close(): unknown }>(one: T): T {
  onTestFinished(async () => {
    await one.close();
  });
  return one;
}
