import { cautionWords as words } from "../../words/cautions.ts";

/** What to look out for before fishing, and whose advice it is. */
export function Cautions() {
  return (
    <section class="ticket cautions" aria-labelledby="cautions">
      <h2 id="cautions">{words.title}</h2>
      <dl>
        {words.cautions.map(({ of, advice, source }) => (
          <div key={of}>
            <dt>{of}</dt>
            <dd>{advice}</dd>
            <dd class="cautions-source">{words.source(source)}</dd>
          </div>
        ))}
      </dl>
      <p>{words.last}</p>
    </section>
  );
}
