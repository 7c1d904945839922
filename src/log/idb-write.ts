import type { IDBPTransaction, StoreNames } from "idb";
import type { LogDatabase, LogSchema } from "./idb-schema.ts";

type Stores = StoreNames<LogSchema>[];
type Writing<Names extends Stores> = IDBPTransaction<LogSchema, Names, "readwrite">;

/**
 * Does the work in one transaction with strict durability and resolves once the browser says it is
 * on disk; if anything fails, nothing of it stays.
 * @param signal breaks it off
 */
export const write = <const Names extends Stores, T>(
  db: LogDatabase,
  stores: Names,
  work: (tx: Writing<Names>) => Promise<T>,
  signal?: AbortSignal,
): Promise<T> => transact(db, stores, "strict", work, signal);

/** The same for what can be made again: nobody need wait for the disk. */
export const writeLoosely = <const Names extends Stores, T>(
  db: LogDatabase,
  stores: Names,
  work: (tx: Writing<Names>) => Promise<T>,
): Promise<T> => transact(db, stores, "relaxed", work);

async function transact<const Names extends Stores, T>(
  db: LogDatabase,
  stores: Names,
  durability: IDBTransactionDurability,
  work: (tx: Writing<Names>) => Promise<T>,
  signal?: AbortSignal,
): Promise<T> {
  signal?.throwIfAborted();
  const tx = db.transaction(stores, "readwrite", { durability });
  // Waited for below; until then its failure must not count as one nobody waits for.
  tx.done.catch(() => {});
  const giveUp = () => abort(tx);
  signal?.addEventListener("abort", giveUp);
  try {
    const result = await work(tx);
    await tx.done;
    return result;
  } catch (cause) {
    // A transaction that broke off by itself knows the reason better than the request within.
    const reason = tx.error;
    if (reason === null) abort(tx);
    throw reason ?? cause;
  } finally {
    signal?.removeEventListener("abort", giveUp);
  }
}

function abort(tx: { abort(): void }): void {
  try {
    tx.abort();
  } catch {
    // It was over already.
  }
}
