import { fireEvent, render, screen, act as settle, waitFor, within } from "@testing-library/preact";
import { beforeEach, expect, test } from "vitest";
import type { BoardView } from "../../src/screens/app/board.ts";
import { BoardScreen } from "../../src/screens/board/board.tsx";
import { act, at, change, fish, Phones } from "../board-picture/script.ts";
import { type FakeApp, fakeApp } from "./fake-app.ts";
import { type FakeBoard, fakeBoard, MEMBERSHIP } from "./fake-board.ts";
import "./patience.ts";

let app: FakeApp;
let board: FakeBoard;
let phones: Phones;

beforeEach(async () => {
  app = await fakeApp();
  board = fakeBoard();
  phones = new Phones();
});

const POUND_G = 453.59237;

/** Ada, with nine fish in two hours, at a depth each hour. */
function ada() {
  phones.stand("peg-1", 0, { name: "Ada", peg: "12" });
  phones.say("peg-1", 0, act("start"));
  phones.say("peg-1", 0, change({ depthMm: 600, bait: "maggot", rig: "2" }));
  for (let n = 1; n <= 8; n += 1) phones.say("peg-1", n * 7, fish(POUND_G));
  phones.say("peg-1", 60, change({ depthMm: 1200 }));
  phones.say("peg-1", 116, fish(POUND_G));
}

const show = (view: BoardView) => {
  board.reading.value = { is: "live", view };
  return render(<BoardScreen app={{ ...app, board }} />);
};
const row = (name: string) =>
  screen.getByRole("heading", { level: 3, name }).closest("li") as HTMLElement;
const names = () => screen.getAllByRole("heading", { level: 3 }).map((one) => one.textContent);

test("a phone on no board is told how to come onto one, and reads nothing", () => {
  board.membership.value = undefined;
  render(<BoardScreen app={{ ...app, board }} />);
  expect(screen.getByRole("link", { name: "Join a board" }).getAttribute("href")).toBe("#join");
  expect(board.readers.value).toBe(0);
});

test("the board is read while it is looked at, and no longer", async () => {
  const { unmount } = render(<BoardScreen app={{ ...app, board }} />);
  await waitFor(() => expect(board.readers.value).toBe(1));
  expect(screen.getByRole("status").textContent).toContain("Reading what is on the board");
  unmount();
  await waitFor(() => expect(board.readers.value).toBe(0));
});

test.each([
  ["peg-1", "See how sending goes, or leave"],
  ["watch-1", "See what you joined, or leave"],
])("on seat %s the way to where the board is left says so", (seat, name) => {
  const { invitation } = MEMBERSHIP;
  board.membership.value = { ...MEMBERSHIP, invitation: { ...invitation, seat } };
  render(<BoardScreen app={{ ...app, board }} />);
  expect(screen.getByRole("link", { name }).getAttribute("href")).toBe("#join");
});

test("a row tells who, what, when, with what and how fast", () => {
  ada();
  show(phones.view(120));
  const told = within(row("Peg 12, Ada"));
  expect(row("Peg 12, Ada").querySelector(".numeral")?.textContent).toBe("9 lb");
  expect(told.getByText("likely 5 lb to 14 lb")).toBeTruthy();
  expect(told.getByText("9 fish, the last 4 min ago")).toBeTruthy();
  expect(told.getByText("2.0 an hour now, 4.5 over the session")).toBeTruthy();
  expect(told.getByText("rig 2, 1.2 m deep, maggot")).toBeTruthy();
  expect(told.queryByText(/No word/)).toBeNull();
});

test("it stays live: what comes in is in the row, and time goes on", async () => {
  ada();
  show(phones.view(120));
  phones.say("peg-1", 121, fish(POUND_G));
  await settle(() => {
    board.reading.value = { is: "live", view: phones.view(121) };
  });
  expect(within(row("Peg 12, Ada")).getByText(/^10 fish, the last under a minute/)).toBeTruthy();
  await settle(() => {
    board.reading.value = { is: "live", view: { ...phones.view(121), at: at(124) } };
  });
  expect(within(row("Peg 12, Ada")).getByText(/^10 fish, the last 3 min ago/)).toBeTruthy();
});

test("a row that changes within a minute is drawn anew", async () => {
  ada();
  show(phones.view(116));
  phones.say("peg-1", 116, change({ depthMm: 900 }));
  await settle(() => {
    board.reading.value = { is: "live", view: phones.view(116) };
  });
  expect(within(row("Peg 12, Ada")).getByText("rig 2, 90 cm deep, maggot")).toBeTruthy();
});

test("a row that does not change goes on with the time", async () => {
  ada();
  phones.say("peg-1", 116.5, { kind: "loss", cause: "off" });
  const view = phones.view(116.6);
  show(view);
  await settle(() => {
    board.reading.value = { is: "live", view: { ...view, at: at(117.1) } };
  });
  expect(within(row("Peg 12, Ada")).getByText("9 fish, the last 1 min ago")).toBeTruthy();
});

test("a row without a fish goes on with the time too", async () => {
  phones.say("peg-1", 0, act("start"));
  const view = phones.view(5);
  show(view);
  await settle(() => {
    board.reading.value = { is: "live", view: { ...view, at: at(15) } };
  });
  expect(within(row("peg-1")).getByText("No word for 15 min")).toBeTruthy();
});

test("other units are shown at once", async () => {
  ada();
  show(phones.view(120));
  await settle(() => app.setSettings({ weight: "kg" }));
  expect(row("Peg 12, Ada").querySelector(".numeral")?.textContent).toBe("4.08 kg");
});

test("a seat that says nothing for long is shown so, and one that has ended is not missed", () => {
  ada();
  phones.say("peg-2", 0, act("start"));
  phones.say("peg-2", 1, act("stop"));
  show(phones.view(128));
  expect(within(row("Peg 12, Ada")).getByText("No word for 12 min")).toBeTruthy();
  expect(within(row("peg-2")).getByText("Finished")).toBeTruthy();
  expect(within(row("peg-2")).queryByText(/No word/)).toBeNull();
});

test("a seat whose sums have ended is told so", () => {
  ada();
  show(phones.view(160));
  expect(
    within(row("Peg 12, Ada")).getByText("No word for 44 min: its sums end there"),
  ).toBeTruthy();
});

test("what is best over all pegs stands in a sentence each, with the hours behind it", () => {
  ada();
  show(phones.view(120));
  const sums = within(screen.getByRole("region", { name: "Over all pegs" }));
  expect(sums.getByText(/^Depth: 60 cm is best with .* over 1 h on 1 peg/)).toBeTruthy();
  expect(sums.getByText(/^Bait: only maggot so far, with .* over 2 h on 1 peg\.$/)).toBeTruthy();
  expect(sums.getByText(/^Rig: only rig 2 so far/)).toBeTruthy();
});

test("too few fish are told to be too few, and what was not named not to be named", () => {
  phones.say("peg-1", 0, act("start"));
  phones.say("peg-1", 0, change({ depthMm: 600 }));
  phones.say("peg-1", 30, fish(POUND_G));
  show(phones.view(45));
  expect(screen.getByText("Depth: too few fish to tell, after 45 min.")).toBeTruthy();
  expect(screen.getByText("Bait: none was named.")).toBeTruthy();
});

test("depths that are much alike have no clear best, and both are told", () => {
  phones.say("peg-1", 0, act("start"));
  for (const [hour, depthMm] of [600, 1200].entries()) {
    phones.say("peg-1", hour * 60, change({ depthMm }));
    for (let n = 1; n <= 6; n += 1) phones.say("peg-1", hour * 60 + n * 9, fish(POUND_G));
  }
  show(phones.view(120));
  expect(
    screen.getByText(/^Depth: no clear best\. .*, over 1 h on 1 peg; .*, over 1 h on 1 peg\.$/),
  ).toBeTruthy();
});

function match() {
  for (const [n, [name, section, pounds]] of (
    [
      ["Ada", "A", 1],
      ["Bo", "A", 9],
      ["Cy", "B", 3],
    ] as const
  ).entries()) {
    const seat = `peg-${n}`;
    phones.stand(seat, 0, { name, peg: String(20 - n), section });
    phones.say(seat, 1, act("start"));
    phones.say(seat, 5, fish(pounds * POUND_G));
  }
}

test("a match has places by section and over all, and says that the scales decide", () => {
  match();
  show(phones.view(10));
  expect(screen.getByText(/the scales decide/)).toBeTruthy();
  expect(
    within(row("Peg 20, Ada")).getByText("Section A: place 2 of 2, overall 3 of 3"),
  ).toBeTruthy();
  expect(
    within(row("Peg 19, Bo")).getByText("Section A: place 1 of 2, overall 1 of 3"),
  ).toBeTruthy();
});

test("a place that another's limits reach into is told not to be settled", () => {
  match();
  phones.say("peg-0", 6, fish(1.5 * POUND_G));
  show(phones.view(10));
  expect(
    within(row("Peg 20, Ada")).getByText(/overall 3 of 3 \(overall not settled\)$/),
  ).toBeTruthy();
});

test("rows stand by peg, by weight, or by section", async () => {
  match();
  show(phones.view(10));
  expect(names()).toEqual(["Peg 18, Cy", "Peg 19, Bo", "Peg 20, Ada"]);
  fireEvent.click(screen.getByRole("radio", { name: "Weight" }));
  await waitFor(() => expect(names()).toEqual(["Peg 19, Bo", "Peg 18, Cy", "Peg 20, Ada"]));
  fireEvent.click(screen.getByRole("radio", { name: "Section" }));
  const ofA = within(await screen.findByRole("region", { name: "Section A" }));
  expect(ofA.getAllByRole("listitem")).toHaveLength(2);
});

test("without a match there is neither a place nor a section to ask for", () => {
  ada();
  show(phones.view(120));
  expect(screen.queryByRole("radio", { name: "Section" })).toBeNull();
  expect(screen.queryByText(/place/)).toBeNull();
});

test("damaged messages, a board out of reach and a refusal are told", async () => {
  ada();
  phones.send("peg-2", 1, undefined);
  show(phones.view(120));
  expect(screen.getByText("One message could not be read and was set aside.")).toBeTruthy();
  await settle(() => {
    board.reading.value = { is: "out-of-reach", view: phones.view(120) };
  });
  expect(screen.getByRole("status").textContent).toMatch(/out of reach.*This is how it stood at/);
  expect(row("Peg 12, Ada")).toBeTruthy();
  await settle(() => {
    board.reading.value = { is: "refused", why: "The invitation has expired." };
  });
  expect(screen.getByRole("status").textContent).toBe("The invitation has expired.");
});

test("what strangers call themselves is shown as words", () => {
  phones.stand("peg-1", 0, { name: "<img src=x onerror=alert(1)>", peg: "<b>1</b>" });
  show(phones.view(1));
  expect(names()).toEqual(["Peg <b>1</b>, <img src=x onerror=alert(1)>"]);
  expect(document.querySelector("img, b")).toBeNull();
});

test("a board with nobody on it says so", () => {
  show(phones.view(1));
  expect(screen.getByRole("status").textContent).toBe(
    "Nobody has sent anything to this board yet.",
  );
  expect(screen.getByRole("heading", { level: 1 }).textContent).toBe(
    `Board “${MEMBERSHIP.invitation.board}”`,
  );
});
