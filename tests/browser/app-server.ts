import { preview } from "vite";
import { inject } from "vitest";

export interface AppServer {
  /** Where the app opens, with a slash at the end. */
  url: string;
  close(): Promise<void>;
}

/**
 * Serves the app as built for this run on a free port of 127.0.0.1.
 * @param base the folder it stands in on the server, such as `/somewhere/deep/`
 * @param folder where it lies on disk, for a test that changes it
 */
export async function startAppServer(base = "/", folder = inject("appFolder")): Promise<AppServer> {
  const server = await preview({
    configFile: false,
    logLevel: "warn",
    base,
    build: { outDir: folder },
    preview: { host: "127.0.0.1", port: 0 },
  });
  const address = server.httpServer.address();
  if (address === null || typeof address === "string") throw new Error("No port to serve on.");
  return { url: `http://127.0.0.1:${address.port}${base}`, close: () => server.close() };
}
