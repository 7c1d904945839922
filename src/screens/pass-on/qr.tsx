import type { QrCode } from "../../share/qr.ts";
import { passOnWords } from "../../words/pass-on.ts";

export function Qr({ code: { size, path } }: { code: QrCode }) {
  return (
    <figure class="stack">
      <svg class="qr" viewBox={`0 0 ${size} ${size}`} role="img" aria-label={passOnWords.link.qr}>
        <path d={path} />
      </svg>
      <figcaption>{passOnWords.link.qr}</figcaption>
    </figure>
  );
}
