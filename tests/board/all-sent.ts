import { expect, vi } from "vitest";
import type { Phone } from "./phone.ts";

/** Waits until nothing that a phone has logged waits to be sent any more. */
export const allSent = (phone: Phone, within: { timeout: number; interval: number }) =>
  vi.waitFor(async () => expect(await phone.outbox.count()).toBe(0), within);
