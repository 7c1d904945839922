/** Finds nats-server, installs it where that is allowed, and runs it. */
import { type ChildProcess, spawn } from "node:child_process";
import { programPath } from "../program.ts";

/** Where the server is, installing it if there is none and that is allowed. */
export const natsServerPath = (): string =>
  programPath({
    title: "nats-server",
    names: ["nats-server"],
    debianPackage: "nats-server",
    variable: "NATS_SERVER_PATH",
  });

/**
 * A server that runs; resolves once it takes connections.
 * @throws with what it said, if it ended before that
 */
export async function runNatsServer(configurationFile: string): Promise<ChildProcess> {
  const server = spawn(natsServerPath(), ["-c", configurationFile], {
    stdio: ["ignore", "ignore", "pipe"],
  });
  // Nobody would end it, once whoever started it has gone.
  const end = () => server.kill();
  process.once("exit", end);
  server.once("exit", () => process.removeListener("exit", end));
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
