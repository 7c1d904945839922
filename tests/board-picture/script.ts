/** Writes down what phones sent to a board as short lines. */
import type { Standing } from "../../src/board/membership.ts";
import type { Message } from "../../src/board/message.ts";
import { BoardPicture } from "../../src/board/picture/picture.ts";
import type { BoardRow, BoardView } from "../../src/board/picture/view.ts";
import type { From } from "../../src/board/reader.ts";
import type { EntryStatement, EventBody, LogEvent } from "../../src/log/event.ts";

export const START = Date.UTC(2026, 5, 6, 9, 0, 0);
export const MINUTE_MS = 60_000;
export const at = (minute: number): number => START + minute * MINUTE_MS;

export type Sent = [from: From, message: Message | undefined];

export const fish = (weightG?: number, count?: number): EntryStatement => ({
  kind: "fish",
  ...(weightG !== undefined && { weightG }),
  ...(count !== undefined && { count }),
});
export const change = (setUp: { depthMm?: number; bait?: string; rig?: string }): EntryStatement =>
  ({ kind: "change", ...setUp }) as EntryStatement;
export const act = (what: "start" | "pause" | "resume" | "stop"): EntryStatement => ({
  kind: "session",
  act: what,
});

/** Phones on one board, whose messages all reach it at once unless told otherwise. */
export class Phones {
  readonly sent: Sent[] = [];

  /**
   * Sends an event of the seat's session.
   * @param minute by the board's clock, when it was said
   * @param clockMs how far the phone's own clock is ahead of the board's
   * @param lateMinutes how long after it was said it was sent
   */
  event(
    seat: string,
    minute: number,
    body: EventBody,
    { clockMs = 0, lateMinutes = 0, session = `session-of-${seat}` } = {},
  ): LogEvent {
    const seq = this.sent.length + 1;
    const event: LogEvent = {
      ...{ v: 1, id: `e${seq}`, session, device: seat, seq, verdict: "log", body },
      at: at(minute) + clockMs,
    };
    const sentAt = at(minute + lateMinutes) + clockMs;
    this.send(seat, minute + lateMinutes, { is: "event", sentAt, event });
    return event;
  }

  say(seat: string, minute: number, statement: EntryStatement, how = {}): LogEvent {
    return this.event(seat, minute, { kind: "entry", statement }, how);
  }

  stand(seat: string, minute: number, standing: Standing): void {
    const session = `session-of-${seat}`;
    this.send(seat, minute, { is: "standing", sentAt: at(minute), session, standing });
  }

  send(seat: string, minute: number, message: Message | undefined): void {
    const place = this.sent.length + 1;
    this.sent.push([
      { seat, subject: `pegscribe.osier.s.${seat}`, place, at: at(minute) },
      message,
    ]);
  }

  view(minute: number): BoardView {
    return pictureOf(this.sent).view(at(minute));
  }

  row(seat: string, minute: number): BoardRow {
    const row = this.view(minute).rows.find((one) => one.seat === seat);
    if (!row) throw new Error(`${seat} has no row.`);
    return row;
  }
}

export function pictureOf(sent: readonly Sent[]): BoardPicture {
  const picture = new BoardPicture();
  for (const one of sent) picture.receive(...one);
  return picture;
}
