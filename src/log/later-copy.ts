import type { Copied, LogCopy } from "./copy.ts";
import type { LogEvent } from "./event.ts";
import type { FileCopy } from "./file-copy.ts";
import type { LogStore } from "./store.ts";

/** The copy in files, fetched when it is first needed. */
export class LaterCopy implements LogCopy {
  #made: Promise<FileCopy> | undefined;

  async add(events: readonly LogEvent[], device?: string): Promise<void> {
    await this.#then((copy) => copy.add(events, device));
  }

  remove(session: string): void {
    void this.#then((copy) => copy.remove(session));
  }

  async read(): Promise<Copied> {
    return (await this.#make()).read();
  }

  complete(store: LogStore): void {
    void this.#then((copy) => copy.complete(store));
  }

  #then(work: (copy: FileCopy) => unknown): Promise<unknown> {
    return this.#make()
      .then(work)
      .catch(() => {});
  }

  #make(): Promise<FileCopy> {
    this.#made ??= import("./make-copy.ts").then(
      ({ makeCopy }) => makeCopy(),
      (cause) => {
        this.#made = undefined;
        throw cause;
      },
    );
    return this.#made;
  }
}
