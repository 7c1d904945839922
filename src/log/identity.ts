import { v7 } from "uuid";

/** A new id for an event, a group, a session or a device: a UUIDv7, later ones sorting after. */
export const newId = (): string => v7();
