/** How the copy lies in its files: a line for each event, and for the device that wrote what follows. */
import * as v from "valibot";
import type { Copied } from "./copy.ts";
import { eventSchema, type LogEvent } from "./event.ts";

const lineSchema = v.union([
  eventSchema,
  v.object({ device: v.string(), v: v.optional(v.never()) }),
]);

/** An empty line goes first: what a kill has cut off must not spoil the line after it. */
export const copyLines = (events: readonly LogEvent[], device?: string): string =>
  ["", ...(device === undefined ? [] : [{ device }]), ...events]
    .map((line) => (line === "" ? "\n" : `${JSON.stringify(line)}\n`))
    .join("");

/** Lines that are cut off or damaged are passed over. */
export function readCopy(texts: readonly string[]): Copied {
  const events: LogEvent[] = [];
  const here = new Set<string>();
  for (const line of texts.flatMap((text) => text.split("\n"))) {
    const read = v.safeParse(lineSchema, parsed(line), { abortEarly: true });
    if (!read.success) continue;
    if ("id" in read.output) events.push(read.output);
    else here.add(read.output.device);
  }
  const device = lastOf(here, events);
  return { events, ...(device !== undefined && { device }) };
}

/** A log that could not be filled again at once has gone on with another device. */
function lastOf(here: ReadonlySet<string>, events: readonly LogEvent[]): string | undefined {
  let last: LogEvent | undefined;
  for (const event of events)
    if (here.has(event.device) && (!last || event.at >= last.at)) last = event;
  return last?.device;
}

function parsed(line: string): unknown {
  try {
    return JSON.parse(line);
  } catch {
    return undefined;
  }
}
