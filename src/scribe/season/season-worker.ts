/** Works out the season beside the screen, on a connection of its own. */
import { SteadyClock } from "../../log/clock.ts";
import { IdbStore } from "../../log/idb-store.ts";
import { LOG_NAME } from "../../log/log-name.ts";
import { toTrouble } from "../../log/trouble.ts";
import { clerkOf } from "./clerk.ts";
import type { FromClerk, ToClerk } from "./distant-clerk.ts";

const clerk = clerkOf(new IdbStore(LOG_NAME, new SteadyClock()));
const tell = (message: FromClerk) => self.postMessage(message);

self.onmessage = async ({ data: { number, asked } }: MessageEvent<ToClerk>) => {
  try {
    const answer = await clerk.ask(asked, (progress) => tell({ number, progress }));
    tell({ number, answer });
  } catch (cause) {
    tell({ number, trouble: toTrouble(cause).reason });
  }
};
