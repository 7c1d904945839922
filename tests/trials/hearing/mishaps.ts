/** What happens to a phone on the bank, beside what browsers do by themselves. */
import type { FakeClock } from "../../speech/fake-clock.ts";
import type { FakePage } from "../../speech/fake-recogniser.ts";
import type { Air } from "./air.ts";

const SECOND_MS = 1000;
const MINUTE_MS = 60 * SECOND_MS;
export const HOUR_MS = 60 * MINUTE_MS;
const DAY_MS = 24 * HOUR_MS;

export interface Phone {
  clock: FakeClock;
  page: FakePage;
  air: Air;
  /** Even numbers from 0 to 1. */
  random(): number;
  /** The angler taps "Try again". */
  tap(): void;
}

/** Each lets the phone be well again by itself, or once the angler has done what he is told. */
export const MISHAPS: Readonly<Record<string, (phone: Phone) => void>> = {
  "the page is hidden for a moment": (phone) => hide(phone, 20 * SECOND_MS),
  "the screen goes off": (phone) => hide(phone, 10 * MINUTE_MS),
  "a phone call": (phone) => {
    hide(phone, 2 * MINUTE_MS);
    block(phone, "audio-capture", 3 * MINUTE_MS);
  },
  "the microphone is unplugged": (phone) => block(phone, "audio-capture", 2 * MINUTE_MS),
  "the permission is withdrawn": (phone) =>
    block(phone, "not-allowed", 2 * MINUTE_MS, () => phone.tap()),
  "the signal is gone": (phone) => {
    phone.page.goOffline();
    block(phone, "network", 10 * MINUTE_MS, () => phone.page.goOnline());
  },
  "the clock is set back an hour": ({ clock }) => {
    clock.wallShiftMs -= HOUR_MS;
  },
  "the clock is set forward a day": ({ clock }) => {
    clock.wallShiftMs += DAY_MS;
  },
  "the time zone changes": () => zone("America/New_York"),
  "summer time ends": ({ clock }) => {
    zone("Europe/London");
    // Before one in the morning of 25 October 2026, UTC, when clocks there go back from two to one.
    clock.wallShiftMs += Date.UTC(2026, 9, 25, 0, 30) - clock.now();
  },
  "it sleeps for two hours": ({ clock, air, page }) => {
    page.setHidden(true);
    air.deafen();
    // Timers and the steady clock stand still meanwhile.
    clock.wallShiftMs += 2 * HOUR_MS;
    clock.setTimeout(() => page.setHidden(false), SECOND_MS);
  },
  "it sleeps for two hours unnoticed": ({ clock, air }) => {
    air.deafen();
    clock.wallShiftMs += 2 * HOUR_MS;
  },
};

function hide({ clock, page, random }: Phone, mostMs: number): void {
  page.setHidden(true);
  clock.setTimeout(() => page.setHidden(false), SECOND_MS + random() * mostMs);
}

function block(
  { clock, air, random }: Phone,
  what: NonNullable<Air["block"]>,
  mostMs: number,
  then: () => void = () => {},
): void {
  air.take(what);
  clock.setTimeout(
    () => {
      air.block = undefined;
      then();
    },
    10 * SECOND_MS + random() * mostMs,
  );
}

/** What Node and browsers go by when they print a time; the log holds none. */
function zone(name: string): void {
  process.env.TZ = name;
}
