/**
 * The baseline: Debian's `pocketsphinx` with its stock English model for dictation, whose words our
 * reader then reads.
 */
import { execFileSync, spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { SOUND_RATE_HZ } from "../../../src/speech/offline/suppressor.ts";
import { toWav } from "../../../src/speech/offline/wav.ts";
import { resample } from "../resample.ts";

const MODEL = "/usr/share/pocketsphinx/model/en-us";
const RATE_HZ = 16_000;

export const isInstalled = (): boolean =>
  spawnSync("pocketsphinx_batch", [], { stdio: "ignore" }).error === undefined;

/** The words of each sound, in order. @param sounds samples from -1 to 1 at `SOUND_RATE_HZ` */
export function dictate(sounds: readonly Float32Array[]): string[] {
  const folder = mkdtempSync(join(tmpdir(), "pegscribe-"));
  try {
    const names = sounds.map((sound, index) => {
      const samples = resample(sound, SOUND_RATE_HZ, RATE_HZ);
      writeFileSync(join(folder, `${index}.wav`), toWav(samples, RATE_HZ));
      return String(index);
    });
    writeFileSync(join(folder, "all.ctl"), names.join("\n"));
    const [ctl, hyp] = [join(folder, "all.ctl"), join(folder, "all.hyp")];
    const files = ["-ctl", ctl, "-hyp", hyp, "-cepdir", folder, "-cepext", ".wav"];
    const model = ["-hmm", `${MODEL}/en-us`, "-lm", `${MODEL}/en-us.lm.bin`];
    const words = ["-dict", `${MODEL}/cmudict-en-us.dict`, "-logfn", "/dev/null"];
    execFileSync("pocketsphinx_batch", [
      "-adcin",
      "yes",
      "-adchdr",
      "44",
      ...files,
      ...model,
      ...words,
    ]);
    // Each line ends with the file's name and the score, in brackets.
    return readFileSync(hyp, "utf8")
      .trimEnd()
      .split("\n")
      .map((line) => line.replace(/\s*\([^()]*\)$/, ""));
  } finally {
    rmSync(folder, { recursive: true });
  }
}
