import { render, screen, act as settle, within } from "@testing-library/preact";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { BoardScreen } from "../../src/screens/board/board.tsx";
import { act, at, Phones } from "../board-picture/script.ts";
import { type FakeApp, fakeApp } from "./fake-app.ts";
import { type FakeBoard, fakeBoard } from "./fake-board.ts";
import "./patience.ts";

let app: FakeApp;
let board: FakeBoard;
let phones: Phones;
let follows: FakeObserver[] = [];

/** Lets the test say what comes into sight. */
class FakeObserver {
  readonly followed = new Set<Element>();
  readonly tell: (entries: { target: Element; isIntersecting: boolean }[]) => void;
  constructor(tell: FakeObserver["tell"]) {
    this.tell = tell;
    follows.push(this);
  }
  observe(element: Element) {
    this.followed.add(element);
  }
  disconnect() {
    this.followed.clear();
  }
}

beforeEach(async () => {
  vi.stubGlobal("IntersectionObserver", FakeObserver);
  follows = [];
  app = await fakeApp();
  board = fakeBoard();
  phones = new Phones();
  for (let peg = 1; peg <= 60; peg += 1) {
    phones.stand(`peg-${peg}`, 0, { name: "Ada", peg: String(peg) });
    phones.say(`peg-${peg}`, 0, act("start"));
  }
  show(1);
  render(<BoardScreen app={{ ...app, board }} />);
});

afterEach(() => vi.unstubAllGlobals());

const show = (minute: number) => {
  board.reading.value = { is: "live", view: phones.view(minute) };
};
const row = (peg: number) =>
  screen.getByRole("heading", { level: 3, name: `Peg ${peg}, Ada` }).closest("li") as HTMLElement;
const isDrawn = (peg: number) => within(row(peg)).queryByText("No fish yet") !== null;
const inSight = (peg: number, isIntersecting: boolean) =>
  settle(() => {
    const target = row(peg).closest("ul") as HTMLElement;
    follows[0]?.tell([{ target, isIntersecting }]);
  });

test("every peg has its name on the page, and only what is in sight has more", async () => {
  expect(screen.getAllByRole("heading", { level: 3 })).toHaveLength(60);
  expect([isDrawn(1), isDrawn(40)]).toEqual([true, false]);
  await inSight(40, true);
  expect([isDrawn(40), isDrawn(60)]).toEqual([true, false]);
  await inSight(40, false);
  expect(isDrawn(40)).toBe(false);
});

test("one that was taken off the page says nothing of the one in its place", async () => {
  await inSight(40, true);
  const gone = row(40).closest("ul")?.cloneNode(true) as HTMLElement;
  await settle(() => follows[0]?.tell([{ target: gone, isIntersecting: false }]));
  expect(isDrawn(40)).toBe(true);
});

test("what comes into sight shows what has happened since", async () => {
  phones.say("peg-40", 2, { kind: "fish", weightG: 400 });
  await settle(() => show(3));
  await inSight(40, true);
  expect(within(row(40)).getByText("1 fish, the last 1 min ago")).toBeTruthy();
});

test("a name that changes out of sight changes there", async () => {
  phones.stand("peg-40", 2, { name: "Bo", peg: "40" });
  await settle(() => show(3));
  expect(screen.getByRole("heading", { level: 3, name: "Peg 40, Bo" })).toBeTruthy();
});

test("nothing out of sight is drawn anew when only time has gone by", async () => {
  const far = row(40).closest("ul") as HTMLElement;
  const before = far.innerHTML;
  const changes: unknown[] = [];
  const watching = new MutationObserver((records) => changes.push(...records));
  watching.observe(far, { childList: true, subtree: true, characterData: true });
  await settle(() => {
    board.reading.value = { is: "live", view: { ...phones.view(3), at: at(400) } };
  });
  watching.disconnect();
  expect(far.innerHTML).toBe(before);
  expect(changes).toEqual([]);
  expect(within(row(1)).getByText(/^No word for 6 h 40 min/)).toBeTruthy();
});
