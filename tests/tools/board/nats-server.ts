/** Finds nats-server, installs it where that is allowed, and runs it. */
import { type ChildProcess, execFileSync, spawn } from "node:child_process";
import { accessSync, constants } from "node:fs";
import { delimiter, join } from "node:path";

/** Where Debian puts it; not every user's PATH has that. */
const ALSO_IN = ["/usr/sbin", "/usr/local/bin"];

/** `NATS_SERVER_PATH` names the one to use; else the first found; else, for root on Debian, its package. */
export function natsServerPath(): string {
  const found = process.env.NATS_SERVER_PATH ?? find("nats-server");
  if (found) return found;
  if (process.getuid?.() !== 0 || !find("apt-get")) {
    throw new Error(
      "Install nats-server (Debian: the package nats-server), or set NATS_SERVER_PATH.",
    );
  }
  const env = { ...process.env, DEBIAN_FRONTEND: "noninteractive" };
  for (const args of [["update"], ["install", "--yes", "--no-install-recommends", "nats-server"]]) {
    execFileSync("apt-get", ["--quiet", ...args], { stdio: "pipe", env });
  }
  const installed = find("nats-server");
  if (!installed) throw new Error("The package nats-server was installed but has no command.");
  return installed;
}

function find(name: string): string | undefined {
  const folders = [...(process.env.PATH ?? "").split(delimiter), ...ALSO_IN];
  return folders.map((folder) => join(folder, name)).find(isExecutable);
}

function isExecutable(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

/**
 * A server that runs; resolves once it takes connections.
 * @throws with what it said, if it ended before that
 */
export async function runNatsServer(configurationFile: string): Promise<ChildProcess> {
  const server = spawn(natsServerPath(), ["-c", configurationFile], {
    stdio: ["ignore", "ignore", "pipe"],
  });
  let said = "";
  await new Promise<void>((ready, failed) => {
    server.stderr.on("data", (piece: Buffer) => {
      if (said.length < 20_000) said += piece.toString();
      if (said.includes("Server is ready")) ready();
    });
    server.once("error", failed);
    server.once("exit", () => failed(new Error(`nats-server ended:\n${said}`)));
  });
  return server;
}
