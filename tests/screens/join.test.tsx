import { fireEvent, render, screen, waitFor } from "@testing-library/preact";
import { afterEach, beforeAll, beforeEach, expect, test } from "vitest";
import { type Invitation, invitationHash } from "../../src/board/invitation.ts";
import { JoinScreen } from "../../src/screens/join/join.tsx";
import { Live } from "../../src/screens/live/live.tsx";
import { Issuer } from "../tools/board/credentials.ts";
import { type FakeApp, fakeApp, MINUTE_MS, NINE } from "./fake-app.ts";

let app: FakeApp;
const invitations: Record<"peg" | "watch" | "over", Invitation> = {} as never;

beforeAll(async () => {
  const issuer = await Issuer.open(1);
  const place = { address: "wss://board.quillet.example", board: "osier" };
  const until = NINE + 60 * MINUTE_MS;
  invitations.peg = await issuer.seat({ ...place, seat: "peg-1" }, until);
  invitations.watch = await issuer.seat({ ...place, seat: "watch-1" }, until);
  invitations.over = await issuer.seat({ ...place, seat: "peg-2" }, NINE - 1000);
});

beforeEach(async () => {
  app = await fakeApp();
});

afterEach(() => {
  location.hash = "";
});

function open(invitation?: Invitation): void {
  location.hash = invitation ? invitationHash(invitation) : "join";
  render(<JoinScreen app={app} />);
}

const type = (label: string, text: string) => {
  const field = screen.getByLabelText(label);
  fireEvent.input(field, { target: { value: text } });
  fireEvent.change(field, { target: { value: text } });
};
const press = (name: string) => fireEvent.click(screen.getByRole("button", { name }));

test("an invitation is taken with a name and one touch; notes and words heard stay off", async () => {
  open(invitations.peg);
  expect(screen.getByText(/goes to board\.quillet\.example/)).toBeTruthy();
  expect(screen.getByRole("button", { name: "Join" }).hasAttribute("disabled")).toBe(true);
  type("Your name on the board", " Ada ");
  press("Join");
  await waitFor(() =>
    expect(app.board.membership.value).toEqual({
      invitation: invitations.peg,
      standing: { name: "Ada" },
      shares: { notes: false, heard: false },
    }),
  );
  expect(location.hash).toBe("#join");
});

test("peg, section, notes and words are as they were set", async () => {
  open(invitations.peg);
  type("Your name on the board", "Ada");
  type("Peg", "12");
  type("Section", "North");
  fireEvent.click(screen.getByLabelText("Notes too"));
  press("Join");
  await waitFor(() =>
    expect(app.board.membership.value).toMatchObject({
      standing: { name: "Ada", peg: "12", section: "North" },
      shares: { notes: true, heard: false },
    }),
  );
});

test("a peg of blanks, as somebody's file may have it, is none", async () => {
  await app.setPlan({ peg: "\u2028 " });
  open(invitations.peg);
  type("Your name on the board", "Ada");
  press("Join");
  await waitFor(() => expect(app.board.membership.value?.standing).toEqual({ name: "Ada" }));
});

test("a seat for watching asks for nothing", async () => {
  open(invitations.watch);
  expect(screen.queryByLabelText("Your name on the board")).toBeNull();
  press("Watch it");
  await waitFor(() => expect(app.board.membership.value?.invitation.seat).toBe("watch-1"));
  expect(screen.getByText(/nothing of yours is sent/)).toBeTruthy();
});

test("an invitation that is over can't be taken", () => {
  open(invitations.over);
  expect(screen.getByText(/This invitation is over/)).toBeTruthy();
  expect(screen.queryByRole("button", { name: "Join" })).toBeNull();
});

test("a pasted link opens its invitation, and what is none says so", async () => {
  open();
  const field = screen.getByLabelText("Your invitation’s link");
  fireEvent.input(field, { target: { value: "https://app.example/#join?board=osier" } });
  await screen.findByText(/This is no invitation/);
  const link = `https://app.example/${invitationHash(invitations.peg)}`;
  fireEvent.input(field, { target: { value: link } });
  await screen.findByText("You are invited");
});

test("says how sending goes, and leaves at one touch", async () => {
  open(invitations.peg);
  type("Your name on the board", "Ada");
  press("Join");
  await screen.findByText("All that you logged is on the board.");
  app.board.sending.value = { is: "going", waiting: 3, tooLarge: 1 };
  await screen.findByText("2 entries on the way to the board.");
  expect(screen.getByText(/1 entry too large/)).toBeTruthy();
  app.board.sending.value = { is: "out-of-reach", waiting: 1 };
  await screen.findByText(/out of reach\. 1 entry waits here/);
  app.board.sending.value = { is: "refused", waiting: 2, why: "The board is full." };
  await screen.findByText("2 entries wait here; none is lost.");
  press("Leave the board");
  await waitFor(() => expect(app.board.membership.value).toBeUndefined());
  await screen.findByLabelText("Your invitation’s link");
});

test("another board's invitation says which board is left for it", async () => {
  open(invitations.peg);
  type("Your name on the board", "Ada");
  press("Join");
  await screen.findByText(/You are on the board “osier”/);
  location.hash = invitationHash({
    ...invitations.peg,
    board: "marram",
    jwt: invitations.watch.jwt,
  });
  await screen.findByText("You leave the board “osier” by joining this one.");
  expect((screen.getByLabelText("Your name on the board") as HTMLInputElement).value).toBe("Ada");
});

test("says that nothing has changed where joining could not be stored", async () => {
  app.board.join = () => Promise.reject(new Error("no room"));
  open(invitations.peg);
  type("Your name on the board", "Ada");
  press("Join");
  await screen.findByText(/could not be stored on this phone/);
  expect(app.board.membership.value).toBeUndefined();
});

test("before a session Live says that it goes to a board, unless the seat only watches", async () => {
  render(<Live app={app} />);
  const said = "What you log goes to the board “osier”";
  expect(screen.queryByText(said)).toBeNull();
  const standing = { name: "Ada" };
  const shares = { notes: false, heard: false };
  await app.board.join({ invitation: invitations.peg, standing, shares });
  expect((await screen.findByText(said)).getAttribute("href")).toBe("#join");
  await app.board.join({ invitation: invitations.watch, standing, shares });
  await waitFor(() => expect(screen.queryByText(said)).toBeNull());
});
