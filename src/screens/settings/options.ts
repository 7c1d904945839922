import type { Option } from "../../ui/choices.tsx";

/** The names of a few values as options to choose from, in their order. */
export const optionsOf = <T extends string>(names: Readonly<Record<T, string>>): Option<T>[] =>
  (Object.entries(names) as [T, string][]).map(([value, name]) => ({ value, name }));
