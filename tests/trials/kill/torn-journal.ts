import { appendFileSync, existsSync, readdirSync } from "node:fs";
import { join } from "node:path";

const [CHECKSUM, LENGTH, WHOLE] = [4, 2, 1];

/**
 * What a kill in the middle of a write leaves at the end of the databases' journal (LevelDB's log
 * format, https://github.com/google/leveldb/blob/main/doc/log_format.md): a record that says it is
 * longer than it is. Chromium goes on behind it, and the time after finds the whole log damaged.
 *
 * @param profile the folder of a browser that does not run
 */
export function tearJournal(profile: string): void {
  const databases = join(profile, "Default", "IndexedDB");
  if (!existsSync(databases)) return;
  for (const name of readdirSync(databases)) {
    const journal = readdirSync(join(databases, name)).find((file) => file.endsWith(".log"));
    if (journal) appendFileSync(join(databases, name, journal), tornRecord());
  }
}

function tornRecord(): Buffer {
  const record = Buffer.alloc(CHECKSUM + LENGTH + 1 + 100, 7);
  record.writeUInt16LE(2000, CHECKSUM);
  record[CHECKSUM + LENGTH] = WHOLE;
  return record;
}
