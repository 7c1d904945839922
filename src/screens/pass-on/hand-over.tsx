import { useState } from "preact/hooks";
import type { Sent } from "../../share/send.ts";
import { passOnWords } from "../../words/pass-on.ts";

interface HandOverProps {
  name: string;
  /** Undefined while what is to go is still being made. */
  send: (() => Promise<Sent>) | undefined;
}

/** The button that lets it go, and what came of it. */
export function HandOver({ name, send }: HandOverProps) {
  const [sent, setSent] = useState<Sent>();
  return (
    <>
      <button
        type="button"
        class="button button-main"
        disabled={!send}
        onClick={async () => setSent(await send?.())}
      >
        {name}
      </button>
      <p role="status">{sent && passOnWords.outcomes[sent]}</p>
    </>
  );
}
