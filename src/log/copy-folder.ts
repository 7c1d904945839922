/** Where the copy lies: a file for each session in the browser's private file system. */

const FOLDER = "log-copy";

/** @param create makes it where there is none; else that fails with a NotFoundError */
export async function copyFolder(create: boolean): Promise<FileSystemDirectoryHandle> {
  const root = await navigator.storage.getDirectory();
  return root.getDirectoryHandle(FOLDER, { create });
}

/** Ids of sessions from elsewhere may be any text. */
export const fileOf = (session: string): string => `${encodeURIComponent(session)}.jsonl`;
