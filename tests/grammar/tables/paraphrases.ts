import { amend } from "./paraphrases/amend.ts";
import { ask } from "./paraphrases/ask.ts";
import { askLog } from "./paraphrases/ask-log.ts";
import { change } from "./paraphrases/change.ts";
import { conditions } from "./paraphrases/conditions.ts";
import { drop } from "./paraphrases/drop.ts";
import { feed } from "./paraphrases/feed.ts";
import { fish } from "./paraphrases/fish.ts";
import type { Paraphrases } from "./paraphrases/group.ts";
import { loss } from "./paraphrases/loss.ts";
import { net } from "./paraphrases/net.ts";
import { note } from "./paraphrases/note.ts";
import { remind } from "./paraphrases/remind.ts";
import { session } from "./paraphrases/session.ts";
import { several } from "./paraphrases/several.ts";
import { sign } from "./paraphrases/sign.ts";
import { sizesShared } from "./paraphrases/sizes-shared.ts";
import { withdraw } from "./paraphrases/withdraw.ts";

/** Every way a practitioner would say each statement, grouped by what is meant. */
export const paraphrases: Paraphrases = [
  ...fish,
  ...loss,
  ...sign,
  ...drop,
  ...feed,
  ...change,
  ...net,
  ...conditions,
  ...note,
  ...amend,
  ...withdraw,
  ...ask,
  ...askLog,
  ...session,
  ...remind,
  ...several,
  ...sizesShared,
];
