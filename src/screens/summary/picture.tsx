import type { Session } from "../../log/session.ts";
import { formatClock, formatWeight, type WeightStyle } from "../../ui/format.ts";
import { Timeline } from "../../ui/timeline.tsx";
import { weightUnit } from "../../ui/units.ts";
import { clockHours, type Hour, hoursOf, type Laid, layOut, levelsUpTo } from "./timeline-of.ts";

interface PictureProps {
  session: Session;
  now: number;
  weight: WeightStyle;
}

/** The weight as it grew, the events beneath it, and its numbers hour by hour. */
export function Picture({ session, now, weight }: PictureProps) {
  const laid = layOut(session, now);
  if (!laid) return null;
  const { size, name } = weightUnit(weight);
  const levels = levelsUpTo(laid.climb.at(-1)?.value ?? 0, size);
  return (
    <section class="ticket" aria-labelledby="picture">
      <h2 id="picture">How it went</h2>
      <Timeline
        {...laid}
        levels={levels.map((value) => ({
          value,
          name: `${Number((value / size).toFixed(1))} ${name}`,
        }))}
        hours={clockHours(laid).map((at) => ({ at, name: formatClock(at) }))}
        title={titleOf(laid, weight)}
      />
      <HourTable hours={hoursOf(session, laid)} weight={weight} />
    </section>
  );
}

function titleOf({ from, to, climb }: Laid, weight: WeightStyle): string {
  const total = formatWeight(climb.at(-1)?.value ?? 0, weight);
  return `Weight landed from ${formatClock(from)} to ${formatClock(to)}, rising to ${total}; events beneath. The table gives the numbers.`;
}

function HourTable({ hours, weight }: { hours: readonly Hour[]; weight: WeightStyle }) {
  return (
    <table class="table">
      <caption class="for-ears">Hour by hour</caption>
      <thead>
        <tr>
          <th scope="col">From</th>
          <th scope="col">Fish</th>
          <th scope="col">Weight</th>
          <th scope="col">Lost</th>
        </tr>
      </thead>
      <tbody>
        {hours.map(({ from, fish, grams, lost }) => (
          <tr key={from}>
            <th scope="row">{formatClock(from)}</th>
            <td>{fish}</td>
            <td>{formatWeight(grams, weight)}</td>
            <td>{lost}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
