import { useEffect, useState } from "preact/hooks";
import { dayName } from "../../share/file-name.ts";
import { LONGEST_LINK, makeCode, readCode, type Shared } from "../../share/link/link.ts";
import { qrCode } from "../../share/qr.ts";
import { type Sent, sendFile, sendLink } from "../../share/send.ts";
import { Tick } from "../../ui/choices.tsx";
import { passOnWords } from "../../words/pass-on.ts";
import { Told } from "../shared/told.tsx";
import { HandOver } from "./hand-over.tsx";
import type { Passed } from "./passed.ts";
import { Qr } from "./qr.tsx";

const words = passOnWords.link;

interface Made {
  url: string;
  /** What whoever opens the link will see, read back from it. */
  shared: Shared;
}

export function LinkForm({ passed }: { passed: Passed }) {
  const [eachFish, setEachFish] = useState(true);
  const made = useLink(passed, eachFish);
  if (made === "failed") return <p class="warn">{words.failed}</p>;
  const tooLong = made !== undefined && made.url.length > LONGEST_LINK;
  const qr = made && qrCode(made.url);
  return (
    <>
      <p>{words.about}</p>
      <Tick label={words.eachFish} value={eachFish} onChange={setEachFish} />
      {!made && <p>{words.making}</p>}
      {made && (
        <p>
          {tooLong
            ? words.tooLong(letters(made.url.length), letters(LONGEST_LINK))
            : words.length(letters(made.url.length))}
        </p>
      )}
      <HandOver
        key={`${tooLong}`}
        name={tooLong ? words.shareFile : words.share}
        send={made && (() => handOver(made.url, tooLong, passed.now))}
      />
      {qr && <Qr code={qr} />}
      {made && !qr && <p>{eachFish ? words.noQr : words.noQrAtAll}</p>}
      {made && (
        <details>
          <summary class="button button-wide">{words.seen}</summary>
          <Told shared={made.shared} styles={passed.styles} />
        </details>
      )}
    </>
  );
}

const letters = (count: number): string => count.toLocaleString("en-GB");

function handOver(url: string, isFile: boolean, now: number): Promise<Sent> {
  if (!isFile) return sendLink({ title: words.subject, url });
  return sendFile(new File([url], `pegscribe-session-${dayName(now)}.txt`, { type: "text/plain" }));
}

/** Undefined until the link for what is asked now is made. */
function useLink(passed: Passed, eachFish: boolean): Made | "failed" | undefined {
  const [made, setMade] = useState<Made | "failed">();
  useEffect(() => {
    let isLeft = false;
    const show = (made: Made | "failed" | undefined) => isLeft || setMade(made);
    show(undefined);
    make(passed, eachFish).then(show, () => show("failed"));
    return () => {
      isLeft = true;
    };
  }, [passed, eachFish]);
  return made;
}

async function make({ session, now, allowed }: Passed, eachFish: boolean): Promise<Made> {
  const code = await makeCode(session, now, { allowed, form: eachFish ? "full" : "brief" });
  const url = `${location.origin}${location.pathname}#${code}`;
  return { url, shared: await readCode(code) };
}
