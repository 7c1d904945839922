/** Handing something over: by the share sheet where there is one, else saved, else copied. */
export type Sent = "shared" | "saved" | "copied" | "cancelled" | "failed";

/** A text or an address. Needs a touch. */
export async function sendText(data: { title: string; text: string }): Promise<Sent> {
  return (await share(data)) ?? copy(data.text);
}

export async function sendLink(data: { title: string; url: string }): Promise<Sent> {
  return (await share(data)) ?? copy(data.url);
}

/** A file that is there already: browsers hand over only right after a touch. */
export async function sendFile(file: File): Promise<Sent> {
  const isTaken = (navigator as Partial<Navigator>).canShare?.({ files: [file] });
  return (isTaken ? await share({ files: [file] }) : undefined) ?? saveFile(file);
}

/** Saved among the downloads; what cannot be saved is copied. */
export async function saveFile(file: File): Promise<Sent> {
  try {
    download(file);
    return "saved";
  } catch {
    return copyFile(file);
  }
}

/** Undefined where there is no share sheet, or it takes no such thing. */
async function share(data: ShareData): Promise<Sent | undefined> {
  if (!(navigator as Partial<Navigator>).share) return undefined;
  try {
    await navigator.share(data);
    return "shared";
  } catch (cause) {
    return cause instanceof DOMException && cause.name === "AbortError" ? "cancelled" : undefined;
  }
}

async function copy(text: string): Promise<Sent> {
  try {
    await navigator.clipboard.writeText(text);
    return "copied";
  } catch {
    return "failed";
  }
}

async function copyFile(file: File): Promise<Sent> {
  try {
    await navigator.clipboard.write([new ClipboardItem({ [file.type]: file })]);
    return "copied";
  } catch {
    return "failed";
  }
}

/** The browser reads the file after this turn; it must not be gone by then. */
const READ_BY_MS = 60_000;

function download(file: File): void {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(file);
  link.download = file.name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), READ_BY_MS);
}
