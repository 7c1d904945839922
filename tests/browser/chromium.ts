import { execFileSync } from "node:child_process";
import { accessSync, constants } from "node:fs";
import { delimiter, join } from "node:path";
import { type Browser, chromium, type LaunchOptions } from "playwright-core";

const NAMES = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable", "chrome"];

/** Without these a browser calls out to its maker's hosts, and as root it does not start. */
export const CHROMIUM_ARGS = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

/**
 * Starts a headless Chromium with an empty profile of its own; the caller closes it.
 * `CHROMIUM_PATH` names the one to use; else the first on the PATH; else, for root on a Debian
 * system, the package `chromium` is installed.
 */
export function launchChromium(options: LaunchOptions = {}): Promise<Browser> {
  return chromium.launch({
    ...options,
    executablePath: chromiumPath(),
    args: [...CHROMIUM_ARGS, ...(options.args ?? [])],
  });
}

/** Where the browser is, installing it if there is none and that is allowed. */
export function chromiumPath(): string {
  const found = process.env.CHROMIUM_PATH ?? firstOnPath(NAMES);
  if (found) return found;
  installFromDebian();
  const installed = firstOnPath(NAMES);
  if (!installed) throw new Error("The package `chromium` was installed but has no command.");
  return installed;
}

function installFromDebian(): void {
  if (process.getuid?.() !== 0 || !firstOnPath(["apt-get"])) {
    throw new Error("Install Chromium or Google Chrome, or set CHROMIUM_PATH to one.");
  }
  aptGet("update");
  aptGet("install", "--yes", "--no-install-recommends", "chromium");
}

function aptGet(...args: string[]): void {
  try {
    const env = { ...process.env, DEBIAN_FRONTEND: "noninteractive" };
    execFileSync("apt-get", ["--quiet", ...args], { stdio: "pipe", encoding: "utf8", env });
  } catch (cause) {
    const { stdout, stderr } = cause as { stdout: string; stderr: string };
    throw new Error(`Chromium could not be installed: apt-get said\n${stdout}${stderr}`, { cause });
  }
}

function firstOnPath(names: string[]): string | undefined {
  const folders = (process.env.PATH ?? "").split(delimiter);
  return names.flatMap((name) => folders.map((folder) => join(folder, name))).find(isExecutable);
}

function isExecutable(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}
