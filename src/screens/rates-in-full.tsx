import type { Rates } from "../share/pictures/rates-of.ts";
import { RatesPicture, rateSentences, verdictSentence } from "../share/pictures/rates-picture.tsx";
import type { Styles } from "../share/summary-text.ts";
import { chartWords } from "../words/charts.ts";

/** The verdict, the picture and its numbers in words. */
export function RatesInFull({ of, styles }: { of: Rates; styles: Styles }) {
  return (
    <>
      <p class="verdict">{verdictSentence(of, styles)}</p>
      {of.levels.length > 0 && (
        <>
          <RatesPicture of={of} styles={styles} />
          <ul class="in-words">
            {rateSentences(of, styles).map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
          <p>{chartWords.rates.key}</p>
        </>
      )}
    </>
  );
}
