import type { Bias } from "../../analysis/weights/bias.ts";
import type { Session } from "../../log/session.ts";
import { climbOf } from "../../share/pictures/climb-of.ts";
import { ClimbPicture, climbSentences } from "../../share/pictures/climb-picture.tsx";
import { hoursOf } from "../../share/pictures/hours-of.ts";
import { formatClock, formatWeight } from "../../ui/format.ts";
import { chartWords } from "../../words/charts.ts";
import { summaryWords } from "../../words/summary.ts";
import type { Settings } from "../app.ts";
import { Card, InWords, Table } from "./card.tsx";

export interface PictureProps {
  session: Session;
  now: number;
  settings: Settings;
}

/** The weight as it grew, the events beneath it, and its numbers hour by hour. */
export function HowItWent({ session, now, settings, bias }: PictureProps & { bias: Bias }) {
  const climb = climbOf(session, now, bias);
  if (!climb) return null;
  const { caption, ...heads } = chartWords.climb.table;
  return (
    <Card title={summaryWords.went.title}>
      <ClimbPicture of={climb} styles={settings} />
      <InWords sentences={climbSentences(climb, session, settings)} />
      <Table
        caption={caption}
        heads={Object.values(heads)}
        rows={hoursOf(session, climb).map(({ from, fish, grams, lost }) => [
          formatClock(from),
          String(fish),
          formatWeight(grams, settings.weight),
          String(lost),
        ])}
      />
    </Card>
  );
}
