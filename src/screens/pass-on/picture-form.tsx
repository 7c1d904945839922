import { useEffect, useState } from "preact/hooks";
import { drawCard } from "../../share/card/draw-card.tsx";
import { toPng } from "../../share/card/png.ts";
import { dayName } from "../../share/file-name.ts";
import { sendFile } from "../../share/send.ts";
import { summaryText } from "../../share/summary-text.ts";
import { passOnWords } from "../../words/pass-on.ts";
import { chartOf } from "./chart-of.tsx";
import { HandOver } from "./hand-over.tsx";
import type { Passed } from "./passed.ts";

const words = passOnWords.picture;

/** The file is made before it is wanted: a share sheet opens only right after a touch. */
export function PictureForm({ passed }: { passed: Passed }) {
  const picture = usePicture(passed);
  if (picture === "failed") return <p class="warn">{words.failed}</p>;
  const { summary, styles, allowed } = passed;
  return (
    <>
      {picture ? (
        <img
          class="goes-out-picture"
          src={picture.address}
          alt={words.alt(summaryText(summary, styles, allowed))}
        />
      ) : (
        <p>{words.drawing}</p>
      )}
      <HandOver name={words.share} send={picture && (() => sendFile(picture.file))} />
    </>
  );
}

interface Picture {
  file: File;
  /** For the page, as long as it shows the picture. */
  address: string;
}

function usePicture(passed: Passed): Picture | "failed" | undefined {
  const [picture, setPicture] = useState<Picture | "failed">();
  useEffect(() => {
    let address = "";
    let isLeft = false;
    draw(passed).then(
      (file) => {
        if (isLeft) return;
        address = URL.createObjectURL(file);
        setPicture({ file, address });
      },
      () => setPicture("failed"),
    );
    return () => {
      isLeft = true;
      URL.revokeObjectURL(address);
    };
  }, [passed]);
  return picture;
}

function draw({ session, now, ...content }: Passed): Promise<File> {
  const chart = chartOf(session, now, content.styles);
  const name = `pegscribe-${dayName(session.startedAt ?? now)}.png`;
  return toPng(drawCard({ ...content, ...(chart && { chart }) }), name);
}
