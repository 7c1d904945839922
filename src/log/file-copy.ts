import type { Copied, LogCopy } from "./copy.ts";
import { copyFolder, fileOf } from "./copy-folder.ts";
import { copyLines, readCopy } from "./copy-lines.ts";
import type { FromCopier, ToCopier } from "./copy-worker.ts";
import type { LogEvent } from "./event.ts";
import { lacking } from "./lacking.ts";
import type { LogStore } from "./store.ts";

/** Between a session that a kill left half copied and the next start there is seldom more than a day. */
const LATELY_MS = 24 * 60 * 60 * 1000;

type CopiedStore = Pick<LogStore, "sessions" | "session" | "lastWritten" | "removals" | "put">;

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
    for (const event of events) {
      const its = bySession.get(event.session);
      if (its) its.push(event);
      else bySession.set(event.session, [event]);
    }
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
   * Puts right what kills, a late disk or a copy that could not be read left undone. Sessions that the
   * copy or the log lacks are added to it, and what either lacks of those written to lately; those
   * that were deleted are removed.
   */
  async complete(store: CopiedStore): Promise<void> {
    const files = new Map((await filesOf()).map((file) => [file.name, file]));
    for (const id of await store.removals()) if (files.delete(fileOf(id))) this.remove(id);
    const spans = await store.sessions();
    const last = (await store.lastWritten())?.session;
    const { lastAt = 0 } = spans.find(({ id }) => id === last) ?? {};
    for (const span of spans) {
      const file = files.get(fileOf(span.id));
      files.delete(fileOf(span.id));
      if (file && span.lastAt < lastAt - LATELY_MS) continue;
      // In this order: what is in the copy was in the log before.
      const copied = await eventsIn(file);
      const stored = await store.session(span.id);
      await this.add(lacking(copied, stored));
      await putBack(store, lacking(stored, copied));
    }
    for (const file of files.values()) await putBack(store, await eventsIn(file));
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

async function putBack(store: CopiedStore, events: readonly LogEvent[]): Promise<void> {
  if (events.length > 0) await store.put(events);
}

const eventsIn = async (file: FileSystemFileHandle | undefined): Promise<LogEvent[]> =>
  file ? readCopy([await textOf(file)]).events : [];

/** One that cannot be read, as it has just been removed or the disk is at fault, spoils no other. */
const textOf = async (file: FileSystemFileHandle): Promise<string> =>
  file
    .getFile()
    .then((found) => found.text())
    .catch(() => "");

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
