/** The ear at work, away from the page. */
import createModule from "soundswallower";
import { PhraseDecoder } from "./decoder.ts";
import { type DecoderModule, MODEL_PARTS, type ModelFiles } from "./decoder-module.ts";
import { type Decoders, Ear } from "./ear.ts";
import { EarsFiles } from "./ears-files.ts";
import { languageOf } from "./ears-language.ts";
import { confidenceOf, USUAL_LIMITS } from "./fit.ts";
import { LOOP_DICTIONARY, phoneLoop } from "./phone-loop.ts";
import { parseDictionary } from "./pronounce.ts";
import { SOUND_RATE_HZ, Suppressor } from "./suppressor.ts";
import type { FromWorker, ToWorker } from "./worker-messages.ts";

type Prepared = Extract<ToWorker, { is: "prepare" }>;

const tell = (message: FromWorker) => postMessage(message);

interface Parts {
  suppressor: Suppressor;
  decoders: Decoders;
}

async function prepare({ base, own }: Prepared): Promise<Parts> {
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
    decoders: {
      phrases: new PhraseDecoder({ module, model, dictionary, fsg }),
      loop: new PhraseDecoder({ module, model, dictionary: LOOP_DICTIONARY, fsg: phoneLoop() }),
    },
  };
}

function work(): void {
  let parts: ReturnType<typeof prepare> | undefined;
  let ear: Ear | undefined;

  async function listen(sound: MessagePort): Promise<void> {
    if (!parts) throw new Error("nothing is prepared");
    const { suppressor, decoders } = await parts;
    let hearing = 0;
    const heard = new Ear(suppressor, decoders, {
      onInterim: (text) => tell({ is: "interim", text }),
      onHeard({ text, fit, fromMs, toMs }) {
        const nowMs = (1000 * hearing) / SOUND_RATE_HZ;
        const [beganAgoMs, endedAgoMs] = [nowMs - fromMs, nowMs - toMs];
        if (text === "" || fit < USUAL_LIMITS.refuseBelow) return;
        const confidence = confidenceOf(fit, USUAL_LIMITS);
        tell({ is: "heard", text, confidence, beganAgoMs, endedAgoMs });
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
