export type Sent = "shared" | "copied" | "cancelled" | "failed";

/** Hands a text to the share sheet, or where there is none to the clipboard. Needs a touch. */
export async function sendText(title: string, text: string): Promise<Sent> {
  const { share, clipboard } = navigator as Partial<Navigator>;
  if (share) {
    try {
      await navigator.share({ title, text });
      return "shared";
    } catch (cause) {
      if (cause instanceof DOMException && cause.name === "AbortError") return "cancelled";
    }
  }
  try {
    await clipboard?.writeText(text);
    return clipboard ? "copied" : "failed";
  } catch {
    return "failed";
  }
}
