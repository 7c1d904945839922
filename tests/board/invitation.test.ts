import { beforeAll, describe, expect, test } from "vitest";
import {
  goodUntil,
  type Invitation,
  invitationHash,
  readInvitation,
} from "../../src/board/invitation.ts";
import { keptJoined, readJoined } from "../../src/board/membership.ts";
import { Issuer } from "../tools/board/credentials.ts";

const UNTIL = Date.UTC(2026, 11, 1);
let invitation: Invitation;

beforeAll(async () => {
  const issuer = await Issuer.open(1);
  const place = {
    address: "wss://board.quillet.example:9222/a?b=c&d",
    board: "osier",
    seat: "peg-1",
  };
  invitation = await issuer.seat(place, UNTIL);
});

describe("an invitation", () => {
  test("comes back from its link as it went in", () => {
    const link = `https://app.example/folder/${invitationHash(invitation)}`;
    expect(readInvitation(link)).toEqual(invitation);
    expect(readInvitation(` ${link}\n`)).toEqual(invitation);
  });

  test("says until when it is good", () => {
    expect(goodUntil(invitation)).toBe(UNTIL);
    expect(goodUntil({ ...invitation, jwt: "a.b.c" })).toBeUndefined();
  });

  test.each([
    ["nothing", ""],
    ["another link", "https://app.example/#live"],
    ["one cut off", (hash: string) => hash.slice(0, -10)],
    ["one for a web page", (hash: string) => hash.replace("wss%3A", "https%3A")],
    ["a script", (hash: string) => hash.replace("wss%3A", "javascript%3A")],
    ["a board of many names", (hash: string) => hash.replace("board=osier", "board=osier.%3E")],
    [
      "an address as long as a page",
      (hash: string) => hash.replace("quillet", "q".repeat(60).concat("%2E").repeat(9)),
    ],
    ["a seat for all", (hash: string) => hash.replace("seat=peg-1", "seat=*")],
  ])("is not read from %s", (_, damage) => {
    const hash = typeof damage === "string" ? damage : damage(invitationHash(invitation));
    expect(readInvitation(hash)).toBeUndefined();
  });
});

describe("what a phone keeps of its board", () => {
  const joined = () => ({
    ...{ invitation, since: 5, session: "s", shares: { notes: false, heard: true } },
    standing: { name: "Ada", peg: "12" },
  });

  test("comes back as it was kept", () => {
    expect(readJoined(keptJoined(joined()))).toEqual(joined());
  });

  test.each([
    ["nothing", undefined],
    ["text", "osier"],
    ["no invitation", () => ({ ...(keptJoined(joined()) as object), invitation: "#join?" })],
    ["no name", () => ({ ...(keptJoined(joined()) as object), standing: { name: " " } })],
  ])("is none where %s is kept", (_, kept) => {
    expect(readJoined(typeof kept === "function" ? kept() : kept)).toBeUndefined();
  });
});
