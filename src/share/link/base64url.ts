/** Bytes as letters that need no escaping in an address (RFC 4648, section 5, without padding). */

/** How many bytes `String.fromCharCode` is given at once: an argument list has its limits. */
const SLICE = 0x2000;

export function toBase64Url(bytes: Uint8Array): string {
  let text = "";
  for (let from = 0; from < bytes.length; from += SLICE) {
    text += String.fromCharCode(...bytes.subarray(from, from + SLICE));
  }
  return btoa(text).replaceAll("+", "-").replaceAll("/", "_").replace(/=+$/, "");
}

/** Undefined where the text is no such thing. */
export function fromBase64Url(text: string): Uint8Array<ArrayBuffer> | undefined {
  if (!/^[\w-]*$/.test(text)) return undefined;
  try {
    const plain = atob(text.replaceAll("-", "+").replaceAll("_", "/"));
    return Uint8Array.from(plain, (letter) => letter.charCodeAt(0));
  } catch {
    return undefined;
  }
}
