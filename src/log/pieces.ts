/** Where entries stand that were split off from others. */
import type { LogEvent } from "./event.ts";
import type { Place } from "./order.ts";

type PieceOf = Required<Pick<Place, "device" | "seq" | "piece">>;

/** The entry an event was split off from, if it was. */
export const splitFrom = ({ body }: LogEvent): string | undefined =>
  body.kind === "entry" ? body.beside : undefined;

/**
 * A piece takes the place of what it was split from, right behind it, so that at the same time it
 * has the same set-up and the fish after it keep their numbers. Of several pieces of one entry the
 * newest is the nearest: it was cut off last. Pieces of an entry that is not there, or of each other
 * in a ring, stand where they were written.
 * @param events each once, in order
 * @returns the places of pieces by their ids
 */
export function placesOfPieces(events: readonly LogEvent[]): ReadonlyMap<string, PieceOf> {
  const piecesOf = new Map<string, string[]>();
  for (const event of events) {
    const from = splitFrom(event);
    if (from === undefined) continue;
    const others = piecesOf.get(from);
    if (others) others.push(event.id);
    else piecesOf.set(from, [event.id]);
  }
  const places = new Map<string, PieceOf>();
  if (piecesOf.size === 0) return places;
  for (const event of events) {
    if (splitFrom(event) !== undefined) continue;
    const { id, device, seq } = event;
    const waiting = [...(piecesOf.get(id) ?? [])];
    for (
      let next = waiting.pop(), piece = 1;
      next !== undefined;
      next = waiting.pop(), piece += 1
    ) {
      places.set(next, { device, seq, piece });
      waiting.push(...(piecesOf.get(next) ?? []));
    }
  }
  return places;
}
