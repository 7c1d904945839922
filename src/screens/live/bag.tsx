import { useMemo } from "preact/hooks";
import { formatWeight } from "../../ui/format.ts";
import { useLater } from "../../ui/later.tsx";
import { weightUnit } from "../../ui/units.ts";
import { tallyWords as say } from "../../words/tally.ts";
import type { App } from "../app.ts";

/** The sums behind it are fetched once the screen stands: they are no part of the first start. */
const loadLimits = async () => {
  const { BagLimits } = await import("./bag-limits.ts");
  return new BagLimits();
};

/**
 * Between which weights the bag lies, spoken weights being what they are. Told in whole units,
 * rounded outward: finer ones would claim to know more.
 */
export function Bag({ app }: { app: App }) {
  const bagLimits = useLater(loadLimits);
  const [session, past] = [app.session.value, app.past.value];
  const { weight } = app.settings.value;
  const limits = useMemo(() => bagLimits?.of(session, past), [bagLimits, session, past]);
  if (!limits) return null;
  const { size } = weightUnit(weight);
  const lower = formatWeight(Math.floor(limits.lower / size) * size, weight);
  const upper = formatWeight(Math.ceil(limits.upper / size) * size, weight);
  return (
    <span>
      {Number.isFinite(limits.upper) ? say.likely(lower, upper) : say.likelyAtLeast(lower)}
    </span>
  );
}
