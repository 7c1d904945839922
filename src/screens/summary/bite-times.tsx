import { useSignal } from "@preact/signals";
import { FACTORS } from "../../analysis/effort/exposure.ts";
import { type BiteFactor, bitesOf } from "../../share/pictures/bites-of.ts";
import { BitesPicture, biteSentences } from "../../share/pictures/bites-picture.tsx";
import { chartWords } from "../../words/charts.ts";
import { summaryWords } from "../../words/summary.ts";
import { FactorChoice } from "../factor-choice.tsx";
import { Card, InWords } from "./card.tsx";
import type { PictureProps } from "./how-it-went.tsx";

/** A drop has one rig and depth all its time, but no hour of its own. */
const OF_A_DROP = FACTORS.filter((factor) => factor !== "hour");

/** How long bites took, where drops were spoken. */
export function BiteTimes({ session, now, settings }: PictureProps) {
  const factor = useSignal<BiteFactor>("depth");
  const bites = bitesOf(factor.value, session, now);
  return (
    <Card title={summaryWords.bites.title}>
      {bites.levels.length === 0 ? (
        <p>{chartWords.bites.none}</p>
      ) : (
        <>
          <FactorChoice
            label={summaryWords.bites.by}
            factors={OF_A_DROP}
            value={factor.value}
            onChange={(value) => {
              factor.value = value;
            }}
          />
          <BitesPicture of={bites} styles={settings} />
          <InWords sentences={biteSentences({ of: bites, styles: settings })} />
          <p>{chartWords.bites.key}</p>
        </>
      )}
    </Card>
  );
}
