/** The one command for whoever runs a board. */
import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { mkdtempSync, readFileSync, rmSync, statSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, afterEach, beforeAll, expect, test, vi } from "vitest";
import { type Invitation, readInvitation } from "../../src/board/invitation.ts";
import { allSent } from "./all-sent.ts";
import { freePort } from "./free-port.ts";
import { Phone } from "./phone.ts";
import { Watcher } from "./watcher.ts";

let folder: string;
let port: number;
const running: ChildProcess[] = [];

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "pegscribe-board-"));
  port = await freePort();
});

afterEach(async () => {
  for (const one of running.splice(0)) await stop(one);
});

afterAll(() => rmSync(folder, { recursive: true, force: true }));

const within = { timeout: 15_000, interval: 20 };

function start(...args: string[]) {
  const command = ["node_modules/tsx/dist/cli.mjs", "tests/tools/board.ts", ...args];
  const child = spawn(process.execPath, command, { stdio: ["ignore", "pipe", "pipe"] });
  running.push(child);
  let said = "";
  for (const stream of [child.stdout, child.stderr]) {
    stream.on("data", (piece: Buffer) => {
      said += piece.toString();
    });
  }
  return { child, said: () => said };
}

async function stop(child: ChildProcess): Promise<void> {
  if (child.exitCode !== null || child.signalCode !== null) return;
  const ended = once(child, "exit");
  child.kill("SIGINT");
  await ended;
}

const linksIn = (text: string) => text.split("\n").filter((line) => line.startsWith("http"));

async function runBoard(): Promise<{ child: ChildProcess; links: string[] }> {
  const { child, said } = start("--seats", "2", "--port", String(port), "--folder", folder);
  await vi.waitFor(() => expect(said()).toContain("Messages:"), within);
  return { child, links: linksIn(said()) };
}

const invitationIn = (link: string | undefined) => readInvitation(link ?? "") as Invitation;

test("prints invitations that work, and those that it printed before when it runs again", async () => {
  const first = await runBoard();
  expect(first.links.map((link) => invitationIn(link).seat)).toEqual(["peg-1", "peg-2", "watch-1"]);
  const phone = new Phone();
  const joined = await phone.join(invitationIn(first.links[0]));
  phone.open(joined);
  const before = await phone.logFish(2);
  await allSent(phone, within);
  await stop(first.child);
  expect(first.child.exitCode).toBe(0);

  const second = await runBoard();
  expect(second.links).toEqual(first.links);
  const watcher = new Watcher(invitationIn(second.links[2]));
  phone.hurry();
  const after = await phone.logFish(1);
  await vi.waitFor(() => expect(watcher.ids).toEqual([...before, ...after]), within);
  phone.close();
  watcher.close();
});

test("keeps what is secret to its owner", () => {
  const modeOf = (name: string) => (statSync(join(folder, name)).mode & 0o777).toString(8);
  for (const name of ["account.seed", "invitations.json", "invitations.html", "nats.conf"]) {
    expect([name, modeOf(name)]).toEqual([name, "600"]);
  }
  const seed = readFileSync(join(folder, "account.seed"), "utf8");
  expect(seed).toMatch(/^SA[A-Z2-7]{56}$/);
  expect(readFileSync(join(folder, "nats.conf"), "utf8")).not.toContain(seed);
});

test.each([
  [["--name", "Osier Lake"], 'A board can\'t be called "Osier Lake"'],
  [["--seats", "many"], '--seats takes a whole number up to 1000, not "many".'],
  [["--certificate", "a.pem"], "A certificate needs its key"],
  [["--sets", "6"], "--sets"],
])("says of %j in a sentence what is wrong", async (args, sentence) => {
  const { child, said } = start(...args);
  await once(child, "exit");
  expect(said()).toContain(sentence);
  expect(said()).not.toContain("    at ");
  expect(child.exitCode).toBe(1);
});
