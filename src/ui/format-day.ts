/** Made once: a formatter costs more than all it will ever format. Apart, as the first screen needs none. */
const DAY = new Intl.DateTimeFormat("en-GB", {
  weekday: "long",
  day: "numeric",
  month: "long",
  year: "numeric",
});

/**
 * "Saturday 6 June 2026", where the phone is; `at` in milliseconds since the epoch. A time beyond all
 * days, as a stranger's link may have one, is none, where a formatter alone would fail.
 */
export function formatDay(at: number): string {
  const date = new Date(at);
  return Number.isNaN(date.getTime()) ? String(date) : DAY.format(date).replace(",", "");
}
