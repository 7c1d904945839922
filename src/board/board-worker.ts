/**
 * Sends to a board and reads it beside the page. The page's policy lets the page itself talk to
 * nobody but the folder it came from; a worker has the policy that it was sent with, which is none.
 * So this file, which connects to the invitation's address alone, is the one way out.
 */
import { IdbOutbox } from "../log/idb-outbox.ts";
import { LOG_NAME } from "../log/log-name.ts";
import { readJoined } from "./membership.ts";
import { Office } from "./office.ts";
import type { FromBoard, ToBoard } from "./talk.ts";

const tell = (message: FromBoard) => self.postMessage(message);

/** The office, once it is known which board it is for. */
const begun = new Promise<Office>((begin) => {
  self.onmessage = ({ data }: MessageEvent<ToBoard>) => {
    const joined = data.do === "begin" ? readJoined(data.joined) : undefined;
    if (joined) begin(new Office({ outbox: new IdbOutbox(LOG_NAME), joined, tell }));
    else void begun.then((office) => heed(office, data));
  };
});

function heed(office: Office, told: ToBoard): void {
  if (told.do === "look") office.look();
  else if (told.do === "hurry") office.hurry();
  else if (told.do === "follow") told.isOn ? office.follow() : office.unfollow();
}
