/**
 * A link that carries the summary itself behind the hash, which no server gets to see: a version, a
 * dot, and the summary as JSON, squeezed, in base64url.
 */
import * as v from "valibot";
import { Refusal } from "../../log/refusal.ts";
import type { Session } from "../../log/session.ts";
import { sharedWords } from "../../words/shared.ts";
import type { Allowed } from "../allowed.ts";
import { type Summary, summarise } from "../summary.ts";
import { fromBase64Url, toBase64Url } from "./base64url.ts";
import { briefSchema, toBrief } from "./brief.ts";
import { fromFull, fullSchema, toFull } from "./full.ts";
import { squeeze, unsqueeze } from "./squeeze.ts";

const VERSION = 1;

/** What messengers and browsers carry without trouble (common practice, no source), in letters. */
export const LONGEST_LINK = 8192;
/** Most letters that are looked at at all, and most bytes that they may unpack to. */
export const LONGEST_CODE = 400_000;
const MOST_UNPACKED = 2_000_000;

/** What a link shows: the sums, and where it holds each fish, the session they follow from. */
export interface Shared {
  summary: Summary;
  session?: Session;
  /** Milliseconds since the epoch: how far a session that still lasted had got. */
  now: number;
}

const sharedSchema = v.variant("form", [fullSchema, briefSchema]);

export interface LinkOptions {
  allowed: Allowed;
  /** Each fish with its time and place in the day, or the sums alone. */
  form: "full" | "brief";
}

/**
 * What stands behind the hash.
 * @param now milliseconds since the epoch: how far a session that still lasts has got
 */
export async function makeCode(
  session: Session,
  now: number,
  { allowed, form }: LinkOptions,
): Promise<string> {
  const shared =
    form === "full" ? toFull(session, now, allowed) : toBrief(summarise(session, now), allowed);
  return `v${VERSION}.${toBase64Url(await squeeze(JSON.stringify(shared)))}`;
}

/** The code in an address or a file's text; undefined where there is none. */
export const codeIn = (text: string): string | undefined =>
  /(?:^|#)(v\d+\..*)$/s.exec(text.trim())?.[1];

/**
 * @param code as `codeIn` finds it
 * @throws Refusal with a sentence for whoever opened the link
 */
export async function readCode(code: string): Promise<Shared> {
  const [, version = "", packed = ""] = /^v(\d+)\.(.*)$/s.exec(code) ?? [];
  if (Number(version) > VERSION) throw new Refusal(sharedWords.newer);
  if (code.length > LONGEST_CODE) throw new Refusal(sharedWords.tooMuch);
  const bytes = fromBase64Url(packed);
  const text = bytes && (await unsqueeze(bytes, MOST_UNPACKED));
  const shared = text === undefined ? undefined : sharedIn(text);
  if (!shared) throw new Refusal(sharedWords.broken);
  return shared;
}

function sharedIn(text: string): Shared | undefined {
  const read = v.safeParse(sharedSchema, parsed(text), { abortEarly: true });
  if (!read.success) return undefined;
  if (read.output.form === "brief") {
    const { summary } = read.output;
    return { summary, now: summary.endedAt ?? summary.startedAt ?? 0 };
  }
  const full = fromFull(read.output);
  return full && { ...full, summary: summarise(full.session, full.now) };
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}
