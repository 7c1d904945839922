import { useSignal } from "@preact/signals";
import { exposuresBy, FACTORS, type Factor } from "../../analysis/effort/exposure.ts";
import type { Session } from "../../log/session.ts";
import { sessionRates } from "../../share/pictures/rates-of.ts";
import { chartWords } from "../../words/charts.ts";
import { summaryWords } from "../../words/summary.ts";
import { FactorChoice } from "../factor-choice.tsx";
import { RatesInFull } from "../rates-in-full.tsx";
import { Card } from "./card.tsx";
import type { PictureProps } from "./how-it-went.tsx";

/** Set-ups side by side by whatever told them apart, with how sure each rate is. */
export function WhatWorked({ session, now, settings }: PictureProps) {
  const chosen = useSignal<Factor>();
  const factor = chosen.value ?? tellingFactor(session, now);
  const rates = sessionRates(factor, session, now);
  return (
    <Card title={summaryWords.worked.title}>
      <FactorChoice
        label={summaryWords.worked.by}
        factors={FACTORS}
        value={factor}
        onChange={(value) => {
          chosen.value = value;
        }}
      />
      <RatesInFull of={rates} styles={settings} />
      {rates.levels.length > 1 && <p>{summaryWords.worked.caution}</p>}
      {rates.more > 0 && <p>{chartWords.rates.more(rates.more)}</p>}
    </Card>
  );
}

/** The first that was tried in two ways, else the depth. */
const tellingFactor = (session: Session, now: number): Factor =>
  FIRST.find((factor) => namedLevels(factor, session, now) > 1) ?? "depth";

const FIRST: readonly Factor[] = ["depth", "rig", "bait", "distance", "hook", "hour"];

const namedLevels = (factor: Factor, session: Session, now: number): number =>
  exposuresBy(factor, session, now).filter(({ level }) => level !== undefined).length;
