import type { ChildProcess } from "node:child_process";
import { once } from "node:events";

/** Ends a server at once and unannounced; one that has ended is left alone. */
export async function endServer(server: ChildProcess): Promise<void> {
  if (server.exitCode !== null || server.signalCode !== null) return;
  const ended = once(server, "exit");
  server.kill("SIGKILL");
  await ended;
}
