import { createServer } from "node:net";

/** A port that nothing listened on a moment ago. */
export function freePort(): Promise<number> {
  return new Promise((found, failed) => {
    const server = createServer();
    server.once("error", failed);
    server.listen(0, "127.0.0.1", () => {
      const address = server.address();
      const port = typeof address === "object" ? address?.port : undefined;
      server.close(() => (port ? found(port) : failed(new Error("No port is free."))));
    });
  });
}
