import { sendText } from "../../share/send.ts";
import { summaryText } from "../../share/summary-text.ts";
import { passOnWords } from "../../words/pass-on.ts";
import { HandOver } from "./hand-over.tsx";
import type { Passed } from "./passed.ts";

const words = passOnWords.text;

export function TextForm({ passed: { summary, styles, allowed } }: { passed: Passed }) {
  const text = summaryText(summary, styles, allowed);
  return (
    <>
      <pre class="goes-out">{text}</pre>
      <HandOver name={words.share} send={() => sendText({ title: words.subject, text })} />
    </>
  );
}
