import { useMemo } from "preact/hooks";
import { type Alteration, alterations, type PartValue } from "../../log/alterations.ts";
import type { EntryStatement } from "../../log/event.ts";
import { preview } from "../../log/preview.ts";
import type { Note } from "../../scribe/notebook.ts";
import { formatDistance, formatLength } from "../../ui/format.ts";
import { reviewWords } from "../../words/review.ts";
import type { App, Settings } from "../app.ts";

const { alters: words } = reviewWords;

interface AltersProps {
  app: App;
  /** What would be written. */
  notes: readonly Note[];
  about: EntryStatement["kind"];
}

/** What a correction does to fish that it is not about, before it is kept. */
export function Alters({ app, notes, about }: AltersProps) {
  const session = app.session.value;
  const key = JSON.stringify(notes.map(({ body }) => body));
  // The notes are made anew each time, with new ids: what they say is in the key.
  const altered = useMemo(
    () => (notes.length > 0 ? alterations(session, preview(session, notes)) : undefined),
    [session, key],
  );
  if (!altered) return null;
  const moves = about === "change" || about === "net";
  if (altered.length === 0 && !moves) return null;
  return (
    <div class="alters" role="status">
      <p class="label">{words.title}</p>
      {altered.length === 0 ? (
        <p>{words.none}</p>
      ) : (
        <ul>
          {altered.map((one) => (
            <li key={JSON.stringify(one)}>{lineOf(one, app.settings.value)}</li>
          ))}
        </ul>
      )}
    </div>
  );
}

/** "Fish 3 to 7: depth 50 cm, was 60 cm". */
function lineOf({ part, from, to, fish }: Alteration, settings: Settings): string {
  const value = (one: PartValue) => shown(one, settings) ?? words.unknown;
  return words.line(rangesOf(fish), words.parts[part], value(to), value(from));
}

function shown(value: PartValue, { length }: Settings): string | undefined {
  const { depthMm, lashMm, distanceMm, bait, baitNote, hook, rig, net } = value;
  const long = depthMm ?? lashMm;
  if (long !== undefined) return formatLength(long, length);
  if (distanceMm !== undefined) return formatDistance(distanceMm);
  if (bait !== undefined) return [baitNote, bait].filter(Boolean).join(" ");
  const plain = hook ?? net ?? rig;
  return plain === undefined ? undefined : String(plain);
}

/** "1 to 3, 5". @param numbers in order */
function rangesOf(numbers: readonly number[]): string {
  const ranges: { first: number; last: number }[] = [];
  for (const number of numbers) {
    const range = ranges.at(-1);
    if (range?.last === number - 1) range.last = number;
    else ranges.push({ first: number, last: number });
  }
  return ranges.map(({ first, last }) => words.range(first, last)).join(", ");
}
