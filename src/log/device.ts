/** The writer's side of an event: which device, which number, what time. */
import type { SteadyClock } from "./clock.ts";
import { EVENT_VERSION, type EventDraft, type LogEvent } from "./event.ts";
import { newId } from "./identity.ts";

/** An event by its id, and the session that it was written into. */
export interface Written {
  event: string;
  session: string;
}

/** A device as it is kept beside its events. */
export interface Device {
  id: string;
  /** The last number given; 0 before the first. */
  seq: number;
  /** The last time given, milliseconds since the epoch. */
  lastAt: number;
  /**
   * What was written last. Absent before the first, and in records that were kept before it was:
   * no store has another shape because of it, so the schema's version stands.
   */
  wrote?: Written;
}

/** A device that has written nothing yet. */
export const newDevice = (): Device => ({ id: newId(), seq: 0, lastAt: 0 });

/** Gives a draft the device's next number and its time. */
export function stampNext(
  device: Device,
  draft: EventDraft,
  clock: SteadyClock,
): { device: Device; event: LogEvent } {
  const { at: spokenAt, ...rest } = draft;
  const seq = device.seq + 1;
  const at = clock.stamp(spokenAt, device.lastAt);
  return {
    device: { ...device, seq, lastAt: at, wrote: written(draft) },
    event: { ...rest, v: EVENT_VERSION, device: device.id, seq, at },
  };
}

/** The device once it holds what a stand-in has written for it, which has numbers of its own. */
export function tookOver(device: Device, events: readonly LogEvent[]): Device {
  const last = events.at(-1);
  if (!last) return device;
  const lastAt = events.reduce((latest, { at }) => Math.max(latest, at), device.lastAt);
  return { ...device, lastAt, wrote: written(last) };
}

const written = ({ id, session }: EventDraft): Written => ({ event: id, session });
