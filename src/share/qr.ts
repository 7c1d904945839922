import { encode } from "uqr";

export interface QrCode {
  /** Modules along one side, the quiet border included. */
  size: number;
  /** The dark modules as an SVG path, one unit a module. */
  path: string;
}

/** The border that a reader needs around the code (ISO/IEC 18004): four modules. */
const QUIET = 4;
/**
 * The finest code that is tried: 125 modules a side. On a phone's screen finer ones are too small
 * for many cameras (from memory).
 */
const FINEST_VERSION = 27;

/** Undefined where the text is too long for a code. */
export function qrCode(text: string): QrCode | undefined {
  try {
    const options = { ecc: "L", border: QUIET, maxVersion: FINEST_VERSION } as const;
    const { size, data } = encode(text, options);
    return { size, path: data.map(rowPath).join("") };
  } catch {
    return undefined;
  }
}

/** One rectangle a run of dark modules. */
const rowPath = (row: readonly boolean[], y: number): string =>
  [...row.map(Number).join("").matchAll(/1+/g)]
    .map(({ index, 0: run }) => `M${index} ${y}h${run.length}v1h-${run.length}z`)
    .join("");
