import { Depths } from "../../ui/charts/depths.tsx";
import { formatLength } from "../../ui/format.ts";
import { chartWords } from "../../words/charts.ts";
import type { Styles } from "../summary-text.ts";
import { clockHours } from "./clock-hours.ts";
import type { SessionDepths } from "./depths-of.ts";
import { depthTicks } from "./ticks.ts";

const words = chartWords.depths;

/** Fish and losses by depth and time. */
export function DepthsPicture({ of, styles }: { of: SessionDepths; styles: Styles }) {
  const { byDepth, unknown: _unknown, bottomMm, ...laid } = of;
  const deepest = Math.max(bottomMm ?? 0, ...laid.kept.map(({ depth }) => depth));
  const fish = byDepth.reduce((total, one) => total + one.fish, 0);
  return (
    <Depths
      {...laid}
      {...(bottomMm !== undefined && {
        bottom: { at: bottomMm, name: words.bottom(formatLength(bottomMm, styles.length)) },
      })}
      levels={depthTicks(deepest, styles.length)}
      hours={clockHours(laid)}
      title={words.title(fish, laid.lost.length)}
    />
  );
}
