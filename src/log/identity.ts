/** What things are called in the log. */
import { v7 } from "uuid";

/** A new id for an event, a group, a session or a device: a UUIDv7, later ones sorting after. */
export const newId = (): string => v7();

/** When such an id was made, milliseconds since the epoch; undefined for ids of other makes. */
export function beganAt(id: string): number | undefined {
  const made = /^([0-9a-f]{8})-([0-9a-f]{4})-7[0-9a-f]{3}-/.exec(id);
  return made ? Number.parseInt(`${made[1]}${made[2]}`, 16) : undefined;
}
