import type { Memo, MemoStore } from "./memos.ts";

/** Memos that last as long as the page. */
export class MemoryMemos implements MemoStore {
  readonly #memos = new Map<string, Memo>();

  async put(memo: Memo): Promise<void> {
    this.#memos.set(memo.id, memo);
  }

  async ids(session: string): Promise<string[]> {
    return [...this.#memos.values()].filter((memo) => memo.session === session).map(({ id }) => id);
  }

  async sound(id: string): Promise<Uint8Array | undefined> {
    return this.#memos.get(id)?.sound;
  }

  async remove(ids: readonly string[]): Promise<void> {
    for (const id of ids) this.#memos.delete(id);
  }

  async removeSession(session: string): Promise<void> {
    await this.remove(await this.ids(session));
  }
}
