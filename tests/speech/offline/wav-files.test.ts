import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { readWav } from "../../tools/wav.ts";

const [PCM, FLOAT, EXTENSIBLE] = [1, 3, 0xfffe];
const chunk = (name: string, body: Buffer): Buffer => {
  const head = Buffer.alloc(8);
  head.write(name, "latin1");
  head.writeUInt32LE(body.length, 4);
  return Buffer.concat([head, body, Buffer.alloc(body.length % 2)]);
};
const riff = (...chunks: Buffer[]): Buffer => {
  const body = Buffer.concat([Buffer.from("WAVE", "latin1"), ...chunks]);
  return chunk("RIFF", body);
};

interface Format {
  kind: number;
  bits: number;
  channels?: number;
  rateHz?: number;
}

const format = ({ kind, bits, channels = 1, rateHz = 16_000 }: Format): Buffer => {
  const body = Buffer.alloc(16);
  body.writeUInt16LE(kind, 0);
  body.writeUInt16LE(channels, 2);
  body.writeUInt32LE(rateHz, 4);
  body.writeUInt16LE(bits, 14);
  return body;
};

/** As long as the standard says, with the real kind of samples at byte 24. */
const extensible = (bits: number): Buffer => {
  const more = Buffer.alloc(24);
  more.writeUInt16LE(PCM, 8);
  return Buffer.concat([format({ kind: EXTENSIBLE, bits }), more]);
};

const sixteen = (...samples: number[]): Buffer => {
  const body = Buffer.alloc(2 * samples.length);
  for (const [index, sample] of samples.entries()) body.writeInt16LE(sample, 2 * index);
  return body;
};

/** One half, then minus one quarter, in each way of writing samples. */
const HALVES: readonly (readonly [string, Format, Buffer])[] = [
  ["8 bits", { kind: PCM, bits: 8 }, Buffer.from([192, 96])],
  ["16 bits", { kind: PCM, bits: 16 }, sixteen(16_384, -8192)],
  ["24 bits", { kind: PCM, bits: 24 }, Buffer.from([0, 0, 0x40, 0, 0, 0xe0])],
  ["32 bits", { kind: PCM, bits: 32 }, Buffer.from([0, 0, 0, 0x40, 0, 0, 0, 0xe0])],
  ["floating", { kind: FLOAT, bits: 32 }, Buffer.from(new Float32Array([0.5, -0.25]).buffer)],
  ["long floating", { kind: FLOAT, bits: 64 }, Buffer.from(new Float64Array([0.5, -0.25]).buffer)],
];

describe("WAV files", () => {
  let folder = "";
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), "pegscribe-"));
  });
  afterAll(() => rmSync(folder, { recursive: true }));

  const read = (bytes: Buffer) => {
    const path = join(folder, "said.wav");
    writeFileSync(path, bytes);
    return readWav(path);
  };

  it.each(HALVES)("are read with samples of %s", (_, kind, data) => {
    const { samples } = read(riff(chunk("fmt ", format(kind)), chunk("data", data)));
    expect([...samples]).toEqual([0.5, -0.25]);
  });

  it("are mixed down to one channel", () => {
    const stereo = format({ kind: PCM, bits: 16, channels: 2 });
    const { samples } = read(riff(chunk("fmt ", stereo), chunk("data", sixteen(16_384, 0))));
    expect([...samples]).toEqual([0.25]);
  });

  it("are read with the long form of their format, and with remarks before it", () => {
    const remark = chunk("LIST", Buffer.from("INFOx", "latin1"));
    const { samples } = read(
      riff(remark, chunk("fmt ", extensible(16)), chunk("data", sixteen(16_384))),
    );
    expect([...samples]).toEqual([0.5]);
  });

  it.each([8000, 11_025, 22_050, 96_000])("are read at %i Hz", (rateHz) => {
    const body = format({ kind: PCM, bits: 16, rateHz });
    expect(read(riff(chunk("fmt ", body), chunk("data", sixteen(1)))).rateHz).toBe(rateHz);
  });

  it("may hold no sound, and may be cut short", () => {
    const head = chunk("fmt ", format({ kind: PCM, bits: 16 }));
    expect(read(riff(head, chunk("data", Buffer.alloc(0)))).samples).toHaveLength(0);
    const whole = riff(head, chunk("data", sixteen(1, 2, 3)));
    expect(read(whole.subarray(0, whole.length - 3)).samples).toHaveLength(1);
  });

  it.each([
    ["is no WAV file", Buffer.alloc(0)],
    ["is no WAV file", Buffer.from("RIFF....AVI LIST")],
    ["lacks its format or its sound", riff(chunk("fmt ", format({ kind: PCM, bits: 16 })))],
    [
      "lacks its format or its sound",
      riff(chunk("fmt ", Buffer.alloc(4)), chunk("data", sixteen(1))),
    ],
    ["holds neither", riff(chunk("fmt ", format({ kind: 6, bits: 8 })), chunk("data", sixteen(1)))],
    ["claims 0 channels", riff(chunk("fmt ", Buffer.alloc(16)), chunk("data", sixteen(1)))],
  ])("are refused by name: %s", (why, bytes) => {
    expect(() => read(bytes)).toThrow(`said.wav ${why}`);
  });

  it("that are missing are refused by name", () => {
    expect(() => readWav(join(folder, "missing.wav"))).toThrow("missing.wav can't be read");
  });
});
