import type { EarsThere } from "../speech/ranking.ts";
import type { TroubleReason } from "../speech/recogniser.ts";
import { troubleWords } from "../speech/trouble-words.ts";
import { listeningWords } from "../words/listening.ts";
import type { Hearing } from "./news.ts";

/** What the browser's ears suffer from and those inside the app do not. */
const CURED_INSIDE: ReadonlySet<TroubleReason> = new Set(["service-off", "language"]);

/** What is wrong with the ears and what to do about it, by what this phone has. */
export function troubleOfEars(
  reason: TroubleReason,
  { web, offline }: Pick<EarsThere, "web" | "offline">,
): NonNullable<Hearing["trouble"]> {
  const { what, remedy } = troubleWords(reason);
  if (reason === "not-kept") {
    return {
      what: web === "none" ? listeningWords.web.none : what,
      todo: listeningWords.fetchFirst,
    };
  }
  const helps = CURED_INSIDE.has(reason) && offline === "absent";
  return { what, todo: helps ? `${remedy} ${listeningWords.orFetch}` : remedy };
}
