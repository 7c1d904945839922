/**
 * The weights of the model's mixtures in the Sphinx decoders' dump format: a head of texts, then a
 * byte for each feature stream, density and senone, the senones side by side.
 */

/** Only the columns of `senones`, in their order. Throws for a dump of another layout. */
export function keepSenones(dump: Uint8Array, senones: readonly number[]): Uint8Array {
  const view = new DataView(dump.buffer, dump.byteOffset, dump.length);
  const from = endOfHead(view);
  const columns = view.getInt32(from + 4, true);
  const rows = (dump.length - from - 8) / columns;
  if (!Number.isInteger(rows)) throw new Error("The mixtures' weights do not fill their rows.");
  const kept = new Uint8Array(from + 8 + rows * senones.length);
  kept.set(dump.subarray(0, from + 8));
  new DataView(kept.buffer).setInt32(from + 4, senones.length, true);
  for (let row = 0; row < rows; row += 1) {
    const [read, write] = [from + 8 + row * columns, from + 8 + row * senones.length];
    for (const [index, senone] of senones.entries())
      kept[write + index] = dump[read + senone] as number;
  }
  return kept;
}

/** Texts with their lengths before them, up to a length of nought. */
function endOfHead(view: DataView): number {
  let at = 0;
  for (;;) {
    const length = view.getInt32(at, true);
    at += 4;
    if (length === 0) return at;
    at += length;
  }
}
