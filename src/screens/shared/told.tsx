/** A session that was passed on: its sums, and where they came along, its chart and its fish. */
import { sayName } from "../../../grammar/saying/fish.ts";
import type { Session } from "../../log/session.ts";
import type { Shared } from "../../share/link/link.ts";
import { type Styles, summaryParts } from "../../share/summary-text.ts";
import { formatClock, formatLength, formatWeight } from "../../ui/format.ts";
import { sharedWords as words } from "../../words/shared.ts";
import { chartOf } from "../pass-on/chart-of.tsx";

/** A table of more is no longer read, and stops a phone. */
const MOST_ROWS = 300;

interface ToldProps {
  shared: Shared;
  styles: Styles;
}

/** What came with the link was allowed by whoever made it. */
const ALL = { water: true, peg: true, notes: true } as const;

export function Told({ shared: { summary, session, now }, styles }: ToldProps) {
  const chart = session && chartOf(session, now, styles);
  return (
    <div class="tickets">
      {summaryParts(summary, styles, ALL).map(({ title, lines }, place) => (
        <section class="ticket" key={place}>
          {title && <h2>{title}</h2>}
          {lines.map((line, row) => (
            <p key={row}>{line}</p>
          ))}
        </section>
      ))}
      {chart && (
        <section class="ticket">
          <h2>{words.howItWent}</h2>
          {chart}
        </section>
      )}
      {session ? <EachFish session={session} styles={styles} /> : <p>{words.brief}</p>}
    </div>
  );
}

function EachFish({ session, styles }: { session: Session; styles: Styles }) {
  const fish = session.entries.filter(({ statement }) => statement.kind === "fish");
  if (fish.length === 0) return null;
  const { at, fish: name, size, depth } = words.fishTable;
  return (
    <section class="ticket">
      <h2>{words.eachFish}</h2>
      <table class="table">
        <thead>
          <tr>
            <th scope="col">{at}</th>
            <th scope="col">{name}</th>
            <th scope="col">{size}</th>
            <th scope="col">{depth}</th>
          </tr>
        </thead>
        <tbody>
          {fish.slice(0, MOST_ROWS).map((entry) => (
            <FishRow key={entry.id} entry={entry} styles={styles} />
          ))}
        </tbody>
      </table>
      {fish.length > MOST_ROWS && <p>{words.moreFish(fish.length - MOST_ROWS)}</p>}
    </section>
  );
}

function FishRow({ entry, styles }: { entry: Session["entries"][number]; styles: Styles }) {
  const { at, statement, setUp } = entry;
  if (statement.kind !== "fish") return null;
  const { species, weightG, lengthMm, count } = statement;
  const name = species === undefined ? words.notNamed : sayName(species);
  const size = [
    weightG !== undefined && formatWeight(weightG, styles.weight, "quarter"),
    lengthMm !== undefined && formatLength(lengthMm, styles.length),
  ].filter(Boolean);
  return (
    <tr>
      <th scope="row">{formatClock(at)}</th>
      <td>{count === undefined ? name : `${count} ${name}`}</td>
      <td>{size.join(", ")}</td>
      <td>{setUp.depthMm !== undefined && formatLength(setUp.depthMm, styles.length)}</td>
    </tr>
  );
}
