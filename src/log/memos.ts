/** The sound of what was said in doubt: kept beside the log, on this device only, until it is settled. */

export interface Memo {
  /** Of the entry, or the line not taken, that it belongs to. */
  id: string;
  session: string;
  /** Mu-law at 8 kHz: 8,000 bytes a second. */
  sound: Uint8Array;
}

/** Every promise may fail as the browser's storage does. */
export interface MemoStore {
  put(memo: Memo): Promise<void>;
  /** A session's memos, by their ids. */
  ids(session: string): Promise<string[]>;
  sound(id: string): Promise<Uint8Array | undefined>;
  remove(ids: readonly string[]): Promise<void>;
  removeSession(session: string): Promise<void>;
}
