/**
 * Writes the copy. Only a worker can add to a file without writing all of it anew. One thing at a
 * time, in the order in which it was asked for.
 */
import { copyFolder, fileOf } from "./copy-folder.ts";

export type ToCopier = { number: number; session: string } & ({ lines: string } | { remove: true });

/** The number of what is done, well or not. */
export type FromCopier = number;

/** Of a file that one worker alone has, as much as is needed here: the page's types know none. */
interface OwnedFile {
  /** A promise in the first browsers that had it (from memory). */
  getSize(): number | Promise<number>;
  write(bytes: Uint8Array, options: { at: number }): number;
  flush(): void;
  close(): void;
}

declare global {
  interface FileSystemFileHandle {
    createSyncAccessHandle(): Promise<OwnedFile>;
  }
}

/** Another tab may be writing to the file. */
const [TRIES, WAIT_MS] = [100, 20];

function serve(): void {
  let queue: Promise<unknown> = Promise.resolve();
  self.onmessage = ({ data }: MessageEvent<ToCopier>) => {
    const work = () => ("remove" in data ? remove(data.session) : add(data.session, data.lines));
    // What cannot be written is not; the log itself is stored.
    queue = queue.then(work).catch(() => {});
    void queue.then(() => self.postMessage(data.number satisfies FromCopier));
  };
}

async function add(session: string, lines: string): Promise<void> {
  const folder = await copyFolder(true);
  const file = await opened(await folder.getFileHandle(fileOf(session), { create: true }));
  try {
    file.write(new TextEncoder().encode(lines), { at: await file.getSize() });
    file.flush();
  } finally {
    file.close();
  }
}

async function opened(file: FileSystemFileHandle): Promise<OwnedFile> {
  for (let left = TRIES; ; left -= 1) {
    try {
      return await file.createSyncAccessHandle();
    } catch (cause) {
      if (left === 0 || !isTaken(cause)) throw cause;
      await new Promise((done) => setTimeout(done, WAIT_MS));
    }
  }
}

/** Safari says InvalidStateError (sqlite-wasm#79). */
const TAKEN = ["NoModificationAllowedError", "InvalidStateError"];

const isTaken = (cause: unknown): boolean =>
  cause instanceof DOMException && TAKEN.includes(cause.name);

const remove = async (session: string): Promise<void> =>
  (await copyFolder(true)).removeEntry(fileOf(session));

serve();
