import type { Copied, LogCopy } from "./copy.ts";
import { copyFolder, fileOf } from "./copy-folder.ts";
import { copyLines, readCopy } from "./copy-lines.ts";
import type { FromCopier, ToCopier } from "./copy-worker.ts";
import type { LogEvent } from "./event.ts";
import type { LogStore } from "./store.ts";

/** Between a session that a kill left half copied and the next start there is seldom more than a day. */
const LATELY_MS = 24 * 60 * 60 * 1000;

/** The copy in files, which a worker writes. */
export class FileCopy implements LogCopy {
  readonly #worker: Pick<Worker, "postMessage">;
  readonly #waiting = new Map<number, () => void>();
  #last = 0;
  #hasFailed = false;

  /** @param worker runs `copy-worker.ts`; where it does not arrive, nothing is copied or waited for */
  constructor(worker: Pick<Worker, "postMessage" | "onmessage" | "onerror">) {
    this.#worker = worker;
    worker.onmessage = ({ data }: MessageEvent<FromCopier>) => {
      this.#waiting.get(data)?.();
      this.#waiting.delete(data);
    };
    worker.onerror = () => {
      this.#hasFailed = true;
      for (const done of this.#waiting.values()) done();
      this.#waiting.clear();
    };
  }

  async add(events: readonly LogEvent[], device?: string): Promise<void> {
    const bySession = new Map<string, LogEvent[]>();
    for (const event of events)
      bySession.set(event.session, [...(bySession.get(event.session) ?? []), event]);
    const asked = Array.from(bySession, ([session, its]) =>
      this.#ask((number) => ({ number, session, lines: copyLines(its, device) })),
    );
    await Promise.all(asked);
  }

  remove(session: string): void {
    void this.#ask((number) => ({ number, session, remove: true }));
  }

  async read(): Promise<Copied> {
    const files = await filesOf();
    return readCopy(await Promise.all(files.map((file) => textOf(file))));
  }

  /**
   * Puts right what kills and a late disk left undone: adds whole sessions that the copy lacks, and
   * what lacks of those written to lately; removes those that were deleted.
   */
  async complete(
    store: Pick<LogStore, "sessions" | "session" | "lastWritten" | "removals">,
  ): Promise<void> {
    const files = new Map((await filesOf()).map((file) => [file.name, file]));
    for (const id of await store.removals()) if (files.has(fileOf(id))) this.remove(id);
    const spans = await store.sessions();
    const last = (await store.lastWritten())?.session;
    const { lastAt = 0 } = spans.find(({ id }) => id === last) ?? {};
    for (const span of spans) {
      const file = files.get(fileOf(span.id));
      if (file && span.lastAt < lastAt - LATELY_MS) continue;
      const known = new Set(file ? readCopy([await textOf(file)]).events.map(({ id }) => id) : []);
      await this.add((await store.session(span.id)).filter((event) => !known.has(event.id)));
    }
  }

  /** Resolves once the worker is done with it, well or not. */
  async #ask(message: (number: number) => ToCopier): Promise<void> {
    if (this.#hasFailed) return;
    this.#last += 1;
    const number = this.#last;
    this.#worker.postMessage(message(number));
    await new Promise<void>((resolve) => this.#waiting.set(number, resolve));
  }
}

const textOf = async (file: FileSystemFileHandle): Promise<string> => (await file.getFile()).text();

/** None where the browser has no such files, or there is no copy yet. */
async function filesOf(): Promise<FileSystemFileHandle[]> {
  const files: FileSystemFileHandle[] = [];
  try {
    for await (const entry of (await copyFolder(false)).values())
      if (entry.kind === "file") files.push(entry as FileSystemFileHandle);
  } catch {
    return files;
  }
  return files;
}
