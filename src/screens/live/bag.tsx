import { useMemo } from "preact/hooks";
import { formatWeightLimits } from "../../ui/format.ts";
import { useLater } from "../../ui/later.tsx";
import { tallyWords as say } from "../../words/tally.ts";
import type { App } from "../app.ts";

/** The sums behind it are fetched once the screen stands: they are no part of the first start. */
const loadLimits = async () => {
  const { BagLimits } = await import("./bag-limits.ts");
  return new BagLimits();
};

/** Between which weights the bag lies, spoken weights being what they are. */
export function Bag({ app }: { app: App }) {
  const bagLimits = useLater(loadLimits);
  const [session, past] = [app.session.value, app.past.value];
  const { weight } = app.settings.value;
  const limits = useMemo(() => bagLimits?.of(session, past), [bagLimits, session, past]);
  if (!limits) return null;
  const { lower, upper } = formatWeightLimits(limits, weight);
  return (
    <span>
      {Number.isFinite(limits.upper) ? say.likely(lower, upper) : say.likelyAtLeast(lower)}
    </span>
  );
}
