/** "2026-06-06", by the date where the phone is; `at` in milliseconds since the epoch. */
export function dayName(at: number): string {
  const date = new Date(at);
  const parts = [date.getFullYear(), date.getMonth() + 1, date.getDate()];
  return parts.map((part) => String(part).padStart(2, "0")).join("-");
}
