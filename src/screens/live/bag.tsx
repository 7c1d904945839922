import { useMemo } from "preact/hooks";
import { formatWeight } from "../../ui/format.ts";
import { useLater } from "../../ui/later.tsx";
import type { App } from "../app.ts";

/** The sums behind it are fetched once the screen stands: they are no part of the first start. */
const loadLimits = async () => (await import("./bag-limits.ts")).bagLimits;

/** Between which weights the bag lies, spoken weights being what they are. */
export function Bag({ app }: { app: App }) {
  const bagLimits = useLater(loadLimits);
  const session = app.session.value;
  const { weight } = app.settings.value;
  const limits = useMemo(() => bagLimits?.(session), [bagLimits, session]);
  if (!limits) return null;
  const lower = formatWeight(limits.lower, weight);
  return (
    <span>
      {Number.isFinite(limits.upper)
        ? `likely ${lower} to ${formatWeight(limits.upper, weight)}`
        : `likely ${lower} or more`}
    </span>
  );
}
