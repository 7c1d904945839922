/** The checks of the stored log, in a page, for the test beside it to call. */
import { SteadyClock } from "../../src/log/clock.ts";
import type { LogEvent } from "../../src/log/event.ts";
import { IdbStore } from "../../src/log/idb-store.ts";
import { draft, STORE_CONTRACT } from "../log/store-contract.ts";
import { COPY_CHECKS } from "./copy-checks.ts";
import { IDB_CHECKS } from "./store-checks.ts";

const OF_IDB = [...IDB_CHECKS, ...COPY_CHECKS];

const open = (name: string) => new IdbStore(name, new SteadyClock());

const shared = open("shared");
const heard: LogEvent[] = [];
shared.subscribe((events) => heard.push(...events));

const page = {
  names: [...STORE_CONTRACT, ...OF_IDB].map((check) => check.name),

  /** Runs one check on a database of its own. */
  async run(name: string): Promise<void> {
    const database = `check: ${name}`;
    const contract = STORE_CONTRACT.find((check) => check.name === name);
    await contract?.run(open(database));
    await OF_IDB.find((check) => check.name === name)?.run(database);
  },

  /** Appends to the database that all pages share, one entry after the other. */
  async append(times: number): Promise<LogEvent[]> {
    const appended: LogEvent[] = [];
    for (let n = 0; n < times; n++) appended.push(...(await shared.append([draft("shared")])));
    return appended;
  },

  /** The ids of what the shared store has told of, from here and from other pages. */
  heard: () => heard.map((event) => event.id),

  stored: () => shared.session("shared"),
};

declare global {
  interface Window {
    storePage: typeof page;
  }
}

window.storePage = page;
