import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { AxeResults } from "axe-core";
import type { Page } from "playwright-core";

const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

/** What axe finds on the page as it stands, one line each. */
export async function findings({ page }: { page: Page }): Promise<string[]> {
  // Evaluated, not added as a script: the page's policy lets no strange script in.
  await page.evaluate(AXE);
  const { violations } = await page.evaluate<AxeResults>("axe.run()");
  return violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html}`));
}
