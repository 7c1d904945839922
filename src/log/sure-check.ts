/** A quick look at a value, before a schema's thorough one. */

/** As much of a schema, or of a step of its pipe, as is looked at here. */
interface Part {
  readonly kind: string;
  readonly type: string;
  readonly pipe?: readonly Part[];
  readonly wrapped?: Part;
  readonly item?: Part;
  readonly entries?: Readonly<Record<string, Part>>;
  readonly key?: string;
  readonly options?: readonly unknown[];
  readonly literal?: unknown;
  readonly requirement?: unknown;
  readonly operation?: (value: unknown) => unknown;
}

type Check = (value: unknown) => boolean;

/**
 * A check that is sure of what it accepts: the schema accepts it too, and gives it back as it is.
 * What it does not accept may be sound all the same, so the schema has to be asked; of kinds of
 * schemas that are not known here it accepts nothing.
 */
export const sureCheck = (schema: { kind: "schema"; type: string }): Check => checkOf(schema);

function checkOf(part: Part): Check {
  if (!part.pipe) return CHECKS[part.type]?.(part) ?? never;
  const steps = part.pipe.map((step) =>
    step.kind === "schema" ? checkOf(step) : (STEPS[step.type]?.(step) ?? never),
  );
  return (value) => steps.every((isRight) => isRight(value));
}

const never: Check = () => false;

const CHECKS: Readonly<Record<string, (part: Part) => Check>> = {
  string: () => (value) => typeof value === "string",
  number: () => (value) => typeof value === "number" && !Number.isNaN(value),
  literal:
    ({ literal }) =>
    (value) =>
      value === literal,
  picklist:
    ({ options = [] }) =>
    (value) =>
      options.includes(value),
  // What is there but undefined is left to the schema.
  optional: ({ wrapped }) => (wrapped ? checkOf(wrapped) : never),
  nullable({ wrapped }) {
    const isInner = wrapped ? checkOf(wrapped) : never;
    return (value) => value === null || isInner(value);
  },
  array({ item }) {
    const isItem = item ? checkOf(item) : never;
    return (value) =>
      Array.isArray(value) &&
      Object.getPrototypeOf(value) === Array.prototype &&
      Object.keys(value).length === value.length &&
      value.every((one) => isItem(one));
  },
  object: ({ entries = {} }) => objectCheck(entries),
  variant: ({ key = "", options = [] }) => variantCheck(key, options as readonly Part[]),
};

/** Steps of a pipe after its schema. */
const STEPS: Readonly<Record<string, (step: Part) => Check>> = {
  min_length: byNumber((least) => (value) => (value as string).length >= least),
  max_length: byNumber((most) => (value) => (value as string).length <= most),
  min_value: byNumber((least) => (value) => (value as number) >= least),
  max_value: byNumber((most) => (value) => (value as number) <= most),
  gt_value: byNumber((bar) => (value) => (value as number) > bar),
  integer: () => Number.isInteger,
  finite: () => Number.isFinite,
  regex({ requirement }) {
    return (value) => requirement instanceof RegExp && requirement.test(value as string);
  },
  check({ requirement }) {
    return typeof requirement === "function" ? (value) => requirement(value) === true : never;
  },
  transform:
    ({ operation }) =>
    (value) =>
      operation?.(value) === value,
};

function byNumber(make: (bound: number) => Check): (step: Part) => Check {
  return ({ requirement }) => (typeof requirement === "number" ? make(requirement) : never);
}

/** Of an object with a field that the schema does not name it is not sure: the schema drops that. */
function objectCheck(entries: Readonly<Record<string, Part>>): Check {
  const fields = new Map(
    Object.entries(entries).map(([name, part]) => [
      name,
      { isRight: checkOf(part), isNeeded: part.type !== "optional" },
    ]),
  );
  const needed = [...fields.values()].filter(({ isNeeded }) => isNeeded).length;
  return (value) => {
    if (!isPlain(value)) return false;
    let found = 0;
    for (const name of Object.keys(value)) {
      const field = fields.get(name);
      if (!field?.isRight(value[name])) return false;
      if (field.isNeeded) found += 1;
    }
    return found === needed;
  };
}

const isPlain = (value: unknown): value is Record<string, unknown> =>
  typeof value === "object" && value !== null && Object.getPrototypeOf(value) === Object.prototype;

function variantCheck(key: string, options: readonly Part[]): Check {
  const checks = new Map(options.map((one) => [one.entries?.[key]?.literal, checkOf(one)]));
  return (value) => isPlain(value) && (checks.get(value[key])?.(value) ?? false);
}
