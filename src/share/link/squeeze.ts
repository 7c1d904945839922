/**
 * Text made small, and back. The zlib form (RFC 1950) of deflate: its checksum tells a link with one
 * wrong letter from a whole one, which bare deflate would turn into other numbers.
 */
const FORM = "deflate";

/**
 * Unpacking goes in slices this small, in bytes: deflate grows at most some 1,030 times, so that
 * no slice unpacks to much more than half a megabyte before its size is looked at.
 */
const SLICE = 512;

export async function squeeze(text: string): Promise<Uint8Array> {
  const stream = new Blob([text]).stream().pipeThrough(new CompressionStream(FORM));
  return new Uint8Array(await new Response(stream).arrayBuffer());
}

/**
 * The text again; undefined where the bytes are damaged, cut off, no UTF-8, or would unpack to more
 * than `most` bytes, of which no more than those and a slice are ever unpacked.
 */
export async function unsqueeze(
  bytes: Uint8Array<ArrayBuffer>,
  most: number,
): Promise<string | undefined> {
  const { writable, readable } = new DecompressionStream(FORM);
  const feeding = feed(writable.getWriter(), bytes);
  const reader = readable.getReader();
  const decoder = new TextDecoder("utf-8", { fatal: true });
  let size = 0;
  let text = "";
  try {
    for (let next = await reader.read(); next.value; next = await reader.read()) {
      size += next.value.length;
      if (size > most) {
        await reader.cancel();
        return undefined;
      }
      text += decoder.decode(next.value, { stream: true });
    }
    await feeding;
    return text + decoder.decode();
  } catch {
    return undefined;
  }
}

/** Writes slice by slice, each once the last was taken. What goes wrong is told by the reader. */
async function feed(
  writer: WritableStreamDefaultWriter<Uint8Array<ArrayBuffer>>,
  bytes: Uint8Array<ArrayBuffer>,
): Promise<void> {
  try {
    for (let from = 0; from < bytes.length; from += SLICE) {
      await writer.ready;
      await writer.write(bytes.subarray(from, from + SLICE));
    }
    await writer.close();
  } catch {
    // A stream that was given up refuses the rest.
  }
}
