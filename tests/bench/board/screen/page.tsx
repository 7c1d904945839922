/** The board's screen by itself, before patches that were worked out beforehand. */
import "../../../../src/ui/theme.css";
import "../../../../src/ui/base.css";
import "../../../../src/ui/controls.css";
import "../../../../src/screens/shell.css";
import { signal } from "@preact/signals";
import { render } from "preact";
import { BoardPicture } from "../../../../src/board/picture/picture.ts";
import { type Patch, patched, Teller } from "../../../../src/board/picture/teller.ts";
import type { Receive } from "../../../../src/board/reader.ts";
import type { EntryStatement } from "../../../../src/log/event.ts";
import type { Reading } from "../../../../src/screens/app/board.ts";
import type { App } from "../../../../src/screens/app.ts";
import { BoardScreen } from "../../../../src/screens/board/board.tsx";
import { DEFAULT_SETTINGS } from "../../../../src/scribe/settings.ts";
import { fakeBoard } from "../../../screens/fake-board.ts";
import { busyAngler } from "../pace.ts";

/** Milliseconds by this page's clock. */
export interface BoardPage {
  /** Works out beforehand what will be shown. */
  prepare(rows: number, seconds: number): void;
  /** @returns until the first picture was painted */
  open(): Promise<number>;
  /** A frame in which nothing changes, which costs what measuring costs. */
  empty(): Promise<number>;
  /** Shows what one more second brought. @returns until it was painted */
  step(): Promise<number>;
  order(name: string): Promise<number>;
  /** Moves by most of a screenful. @returns until it was painted */
  scroll(): Promise<number>;
}

declare global {
  interface Window {
    board: BoardPage;
  }
}

const SECOND_MS = 1000;
const START = Date.UTC(2026, 5, 6, 9);
/** So long was fished before anybody looks. */
const BEFORE_MS = 60 * 60_000;
const IN_SECTION = 10;

const board = fakeBoard();
/** All that this screen needs of it. */
const app = { settings: signal(DEFAULT_SETTINGS), board } as unknown as App;
let patches: Patch[] = [];

/** From now until what is done next has been painted: nothing else waits between a frame and its end. */
const frame = (run: () => void): Promise<number> =>
  new Promise((done) =>
    requestAnimationFrame(() => {
      const before = performance.now();
      const channel = new MessageChannel();
      channel.port1.onmessage = () => done(performance.now() - before);
      run();
      channel.port2.postMessage(undefined);
    }),
  );

const viewOf = (reading: Reading) => ("view" in reading ? reading.view : undefined);

function show(patch: Patch | undefined): void {
  if (!patch) throw new Error("There is no more to be shown.");
  board.reading.value = { is: "live", view: patched(viewOf(board.reading.value), patch) };
}

/** What comes to look at such a board, worked out as beside the screen. */
function patchesOf(rows: number, seconds: number): Patch[] {
  const picture = new BoardPicture();
  const teller = new Teller(picture);
  const said = Array.from({ length: rows }, (_, n) => entriesOf(n, rows, seconds)).flat();
  said.sort((one, other) => one.from.at - other.from.at);
  const told: Patch[] = [];
  let next = 0;
  for (let second = 0; second <= seconds; second += 1) {
    const now = START + BEFORE_MS + second * SECOND_MS;
    for (let one = said[next]; one && one.from.at <= now; one = said[++next])
      picture.receive(one.from, one.message);
    told.push(structuredClone(teller.tell(now)));
  }
  return told;
}

type Parts = { from: Parameters<Receive>[0]; message: NonNullable<Parameters<Receive>[1]> };

/** An hour of one in ten of what a busy angler says, then all of it, so that it is quickly made. */
function entriesOf(n: number, rows: number, seconds: number): Parts[] {
  const seat = `peg-${n + 1}`;
  const session = `session-${n}`;
  const section = String.fromCharCode(65 + (Math.floor(n / IN_SECTION) % 26));
  const standing = { name: `Angler ${n + 1}`, peg: String(n + 1), section };
  const from = (at: number, place: number) => ({ seat, subject: `s.${seat}`, place, at });
  const entry = (at: number, seq: number, statement: EntryStatement): Parts => ({
    from: from(at, seq * rows + n),
    message: {
      ...{ is: "event", sentAt: at },
      event: {
        ...{ v: 1, id: `${n}-${seq}`, session, device: seat, seq, at, verdict: "log" },
        body: { kind: "entry", statement },
      },
    },
  });
  const said = busyAngler(n + 1, BEFORE_MS + seconds * SECOND_MS);
  return [
    { from: from(START, n), message: { is: "standing", sentAt: START, session, standing } },
    ...said
      .filter(({ at }, place) => at >= BEFORE_MS || place % 10 === 0)
      .map(({ at, statement }, place) => entry(START + at, place + 1, statement)),
  ];
}

window.board = {
  prepare(rows, seconds) {
    patches = patchesOf(rows, seconds);
  },
  open: () =>
    frame(() => {
      show(patches.shift());
      const root = document.getElementById("app") as HTMLElement;
      render(
        <div class="shell">
          <header class="masthead" />
          <main class="screen">
            <BoardScreen app={app} />
          </main>
        </div>,
        root,
      );
    }),
  empty: () => frame(() => {}),
  step: () => frame(() => show(patches.shift())),
  order: (name) =>
    frame(() => {
      const labels = [...document.querySelectorAll<HTMLElement>(".choice")];
      labels.find(({ textContent }) => textContent === name)?.click();
    }),
  scroll: () =>
    frame(() => {
      const main = document.querySelector<HTMLElement>(".screen") as HTMLElement;
      main.scrollTop += main.clientHeight * 0.8;
    }),
};
