/** Where on the server a board's messages stand. */
import type { Invitation } from "./invitation.ts";

/** The stream that keeps everything said on a board. */
export const streamOf = (board: string): string => `pegscribe_${board}`;

/** All subjects of a board: session, then seat. */
export const subjectsOf = (board: string): string => `pegscribe.${board}.*.*`;

/** What one seat may write to, in any session. */
export const seatSubjects = (board: string, seat: string): string => `pegscribe.${board}.*.${seat}`;

/** A session's id is a UUID and stands there as it is; one of a file from elsewhere may be any text. */
export const subjectFor = ({ board, seat }: Invitation, session: string): string =>
  `pegscribe.${board}.${escaped(session)}.${seat}`;

/** Without what parts a subject or ends it: dots, blanks, a line's end. */
const escaped = (id: string): string => encodeURIComponent(id).replaceAll(".", "%2E");

/** The seat that wrote a message: the server lets nobody else write there. */
export const seatIn = (subject: string): string => subject.split(".")[3] ?? "";

/** Seats with such a name have no subject of their own: they read the board and are not on it. */
export const isForWatching = (seat: string): boolean => seat.startsWith("watch-");

/** Where a seat's answers from the server arrive; no other seat may listen there. */
export const inboxOf = (seat: string): string => `_INBOX_${seat}`;

/** What a seat may ask the server, so as to read its board and nothing else. */
export const readingSubjects = (board: string): string[] => {
  const stream = streamOf(board);
  return [
    `$JS.API.STREAM.INFO.${stream}`,
    `$JS.API.CONSUMER.CREATE.${stream}.>`,
    `$JS.API.CONSUMER.INFO.${stream}.>`,
    `$JS.API.CONSUMER.DELETE.${stream}.>`,
    `$JS.API.CONSUMER.MSG.NEXT.${stream}.>`,
  ];
};
