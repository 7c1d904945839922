/** The ear at work, away from the page. */
import createModule from "soundswallower";
import { PhraseDecoder } from "./decoder.ts";
import { type DecoderModule, MODEL_PARTS, type ModelFiles } from "./decoder-module.ts";
import { Ear } from "./ear.ts";
import { EarsFiles } from "./ears-files.ts";
import { languageOf } from "./ears-language.ts";
import { hasGarbage } from "./garbage.ts";
import { parseDictionary } from "./pronounce.ts";
import { SOUND_RATE_HZ, Suppressor } from "./suppressor.ts";
import type { FromWorker, ToWorker } from "./worker-messages.ts";

type Prepared = Extract<ToWorker, { is: "prepare" }>;

const tell = (message: FromWorker) => postMessage(message);

async function prepare({
  base,
  own,
}: Prepared): Promise<{ suppressor: Suppressor; decoder: PhraseDecoder }> {
  const files = new EarsFiles(base);
  const text = async (file: "dict.txt" | "grammar.fsg") =>
    new TextDecoder().decode(await files.read(file));
  const parts = MODEL_PARTS.map(async (part) => [part, await files.read(part)] as const);
  const model = Object.fromEntries(await Promise.all(parts)) as unknown as ModelFiles;
  const wasmBinary = (await files.read("decoder.wasm")).buffer;
  const module = (await createModule({ wasmBinary })) as DecoderModule;
  const words = parseDictionary(await text("dict.txt"));
  const { fsg, dictionary } = languageOf(await text("grammar.fsg"), words, own);
  return {
    suppressor: await Suppressor.create(await files.read("suppressor.wasm")),
    decoder: new PhraseDecoder({ module, model, dictionary, fsg }),
  };
}

function work(): void {
  let parts: ReturnType<typeof prepare> | undefined;
  let ear: Ear | undefined;

  async function listen(sound: MessagePort): Promise<void> {
    if (!parts) throw new Error("nothing is prepared");
    const { suppressor, decoder } = await parts;
    let hearing = 0;
    const heard = new Ear(suppressor, decoder, {
      onInterim: (text) => tell({ is: "interim", text: hasGarbage(text) ? "" : text }),
      onHeard({ text, fromMs, toMs }) {
        const nowMs = (1000 * hearing) / SOUND_RATE_HZ;
        const [beganAgoMs, endedAgoMs] = [nowMs - fromMs, nowMs - toMs];
        if (text !== "" && !hasGarbage(text)) tell({ is: "heard", text, beganAgoMs, endedAgoMs });
      },
    });
    ear = heard;
    sound.onmessage = ({ data }: MessageEvent<Float32Array>) => {
      hearing += data.length;
      heard.hear(data);
    };
    tell({ is: "ready" });
  }

  async function follow(message: ToWorker): Promise<void> {
    if (message.is === "prepare") parts = prepare(message);
    else if (message.is === "listen") await listen(message.sound);
    else {
      ear?.end();
      tell({ is: "finished" });
    }
  }

  addEventListener("message", ({ data }: MessageEvent<ToWorker>) => {
    follow(data).catch((cause) => tell({ is: "failed", detail: String(cause) }));
  });
}

work();
