/** Compares statements as the tables write them: units aside, numbers within rounding, "*" for any word. */
export function isAlike(expected: unknown, actual: unknown): boolean {
  if (expected === "*") return typeof actual === "string" && actual !== "";
  if (typeof expected === "number" && typeof actual === "number") {
    return Math.abs(expected - actual) <= 1e-9 * Math.max(1, Math.abs(expected));
  }
  if (typeof expected !== "object" || typeof actual !== "object" || !expected || !actual) {
    return expected === actual;
  }
  const fields = keysOf(expected);
  return (
    fields.length === keysOf(actual).length &&
    fields.every((key) => isAlike(at(expected, key), at(actual, key)))
  );
}

const at = (value: object, key: string): unknown => (value as Record<string, unknown>)[key];

const keysOf = (value: object): string[] =>
  Object.keys(value).filter((key) => key !== "unit" && at(value, key) !== undefined);
