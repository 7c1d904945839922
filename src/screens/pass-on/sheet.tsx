import { summaryParts } from "../../share/summary-text.ts";
import { passOnWords } from "../../words/pass-on.ts";
import { sharedWords } from "../../words/shared.ts";
import { chartOf } from "./chart-of.tsx";
import type { Passed } from "./passed.ts";

/** The session for paper. It is always there while its screen is, so that any way of printing works. */
export function Sheet({ passed }: { passed: Passed }) {
  const { session, summary, now, styles, allowed } = passed;
  const [first, ...parts] = summaryParts(summary, styles, allowed);
  return (
    <article class="sheet">
      <h1>{passOnWords.card.by}</h1>
      {first?.lines.map((line, place) => (
        <p key={place}>{line}</p>
      ))}
      <figure aria-label={sharedWords.howItWent}>{chartOf(session, now, styles)}</figure>
      {parts.map(({ title, lines }) => (
        <section key={title ?? lines[0]}>
          {title && <h2>{title}</h2>}
          <ul>
            {lines.map((line, place) => (
              <li key={place}>{line}</li>
            ))}
          </ul>
        </section>
      ))}
    </article>
  );
}
