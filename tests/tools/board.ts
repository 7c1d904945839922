/** Runs a board on this machine until it is stopped, and prints the invitations to it. */
import { writeFileSync } from "node:fs";
import { homedir } from "node:os";
import { join, resolve } from "node:path";
import { streamConfig } from "./board/configuration.ts";
import { invitationsOf, linkOf, printedCode, sheet } from "./board/invitations.ts";
import { OpenBoard } from "./board/open-board.ts";
import { type RunOptions, readOptions, USAGE } from "./board/options.ts";

/** Room for some forty matches of eighty phones, five hundred entries each, at 600 bytes. */
const MOST_BYTES = 1024 ** 3;
const MS_PER_DAY = 86_400_000;

const say = (...lines: string[]) => console.log(lines.join("\n"));

/** Where phones reach it: this machine alone, or by a name and always encrypted. */
function addressOf({ host, port, tls }: RunOptions): string {
  if (!host) return `ws://127.0.0.1:${port}`;
  return tls ? `wss://${host}:${port}` : `wss://${host}`;
}

const named = (what: string, count: number) =>
  Array.from({ length: count }, (_, n) => `${what}-${n + 1}`);

/** A code whose lines are broken can't be read. */
function fitting(code: string): string {
  const width = code.indexOf("\n");
  const isWide = width > (process.stdout.columns ?? width);
  return isWide ? `(Its code needs ${width} columns; it is on the sheet to print.)` : code;
}

async function run(options: RunOptions): Promise<void> {
  const { board, port, tls, days, app } = options;
  let stopping: () => void = () => process.exit();
  for (const signal of ["SIGINT", "SIGTERM"] as const) process.once(signal, () => stopping());
  const folder = resolve(options.folder ?? join(homedir(), "pegscribe-boards", board));
  const opened = await OpenBoard.open({
    ...{ board, folder, port, mostBytes: MOST_BYTES, storeFolder: join(folder, "store") },
    // Without a certificate of its own nobody else is to reach it but through what encrypts.
    host: tls ? "0.0.0.0" : "127.0.0.1",
    ...(tls && { tls: { ...tls, certificate: resolve(tls.certificate), key: resolve(tls.key) } }),
  });
  const until = Date.now() + days * MS_PER_DAY;
  const address = addressOf(options);
  const seats = [...named("peg", options.seats), ...named("watch", options.watchers)];
  const invitations = await invitationsOf(folder, seats, address, (seat) =>
    opened.invite(seat, until, address),
  );
  const file = (name: string) => join(folder, name);
  writeFileSync(file("invitations.html"), sheet(board, app, invitations), { mode: 0o600 });
  writeFileSync(file("stream.json"), JSON.stringify(streamConfig(board, MOST_BYTES), null, 2));
  for (const one of invitations) {
    const link = linkOf(app, one);
    say("", `== ${one.seat} ==`, fitting(printedCode(link)), link);
  }
  say(
    "",
    `The board "${board}" runs at ${address}. Stop it with Ctrl+C; nothing on it is lost by that.`,
    `Invitations to print:  ${file("invitations.html")}`,
    `Configuration:         ${opened.file} and ${file("stream.json")}`,
    `Its key, to be kept:   ${file("account.seed")}`,
    `Messages:              ${file("store")}`,
  );
  stopping = () => void opened.stop();
  await opened.ended();
}

try {
  if (process.argv.includes("--help")) say(USAGE);
  else await run(readOptions(process.argv.slice(2)));
} catch (cause) {
  console.error(cause instanceof Error ? cause.message : cause);
  console.error("npm run board -- --help says what can be said.");
  process.exitCode = 1;
}
