/** Holds figures that come out alike on any machine to what was agreed. */
import type { Figures } from "./part.ts";

/** The least or the most that a figure may be. */
export type Budget = { least: number } | { most: number };

/** By part of the bench, then by figure. */
export type Budgets = Readonly<Record<string, Readonly<Record<string, Budget>>>>;

/** What is broken, in sentences; a budget without its figure is broken too. */
export function breaches(budgets: Readonly<Record<string, Budget>>, figures: Figures): string[] {
  return Object.entries(budgets).flatMap(([name, budget]) => {
    const figure = figures[name];
    if (figure === undefined || Number.isNaN(figure)) return [`${name}: was not measured`];
    if ("least" in budget && figure < budget.least)
      return [`${name}: ${figure} is less than ${budget.least}`];
    if ("most" in budget && figure > budget.most)
      return [`${name}: ${figure} is more than ${budget.most}`];
    return [];
  });
}
