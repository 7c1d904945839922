import { type Bias, biasFactor } from "../analysis/weights/bias.ts";
import type { Session } from "../log/session.ts";
import { judgementSentence, ScalesPicture, weighedOf } from "../share/pictures/scales-picture.tsx";
import type { Styles } from "../share/summary-text.ts";

interface WhatScalesSayProps {
  session: Session;
  /** Learnt from the weighed nets of this session and of earlier ones. */
  bias: Bias;
  styles: Styles;
}

/** What the weighed nets say about the weights that were spoken. */
export function WhatScalesSay({ session, bias, styles }: WhatScalesSayProps) {
  const weighed = weighedOf(session);
  return (
    <>
      {weighed.length > 0 && <ScalesPicture of={weighed} styles={styles} />}
      <p class={biasFactor(bias).tells ? "verdict" : ""}>{judgementSentence(bias)}</p>
    </>
  );
}
