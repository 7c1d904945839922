import { depthsOf } from "../../share/pictures/depths-of.ts";
import { DepthsPicture } from "../../share/pictures/depths-picture.tsx";
import { hoursText } from "../../share/pictures/hours-text.ts";
import { formatLength } from "../../ui/format.ts";
import { chartWords } from "../../words/charts.ts";
import { summaryWords } from "../../words/summary.ts";
import { Card, Table } from "./card.tsx";
import type { PictureProps } from "./how-it-went.tsx";

/** What was caught at what depth and when. */
export function ByDepth({ session, now, settings }: PictureProps) {
  const depths = depthsOf(session, now);
  if (!depths) return null;
  const { caption, ...heads } = chartWords.depths.table;
  const { byDepth, unknown } = depths;
  return (
    <Card title={summaryWords.depths.title}>
      {byDepth.length === 0 ? (
        <p>{chartWords.depths.none}</p>
      ) : (
        <>
          <DepthsPicture of={depths} styles={settings} />
          <p>{chartWords.depths.key}</p>
          <Table
            caption={caption}
            heads={Object.values(heads)}
            rows={byDepth.map(({ level, hours, fish, lost }) => [
              formatLength(level, settings.length),
              hoursText(hours),
              String(fish),
              String(lost),
            ])}
          />
        </>
      )}
      {byDepth.length > 0 && unknown > 0 && <p>{chartWords.depths.unknown(unknown)}</p>}
    </Card>
  );
}
