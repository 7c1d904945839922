import { type Browser, chromium, type LaunchOptions } from "playwright-core";
import { programPath } from "../tools/program.ts";

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
export const chromiumPath = (): string =>
  programPath({
    title: "Chromium or Google Chrome",
    names: ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable", "chrome"],
    debianPackage: "chromium",
    variable: "CHROMIUM_PATH",
  });
