/** Finds a program that tests need beside Node, and installs it where that is allowed. */
import { execFileSync } from "node:child_process";
import { accessSync, constants } from "node:fs";
import { delimiter, join } from "node:path";

export interface Program {
  /** For people. */
  title: string;
  /** The commands it may go by, the first that is found is used. */
  names: readonly string[];
  /** Its package in Debian. */
  debianPackage: string;
  /** The variable that names the one to use, and is not looked into further. */
  variable: string;
}

/** Where Debian puts servers; not every user's PATH has that. */
const ALSO_IN = ["/usr/sbin", "/usr/local/bin"];

/**
 * Where a program is. Where there is none, its package is installed, for root on a Debian system.
 * @throws with what to do, where it is neither there nor to be had
 */
export function programPath({ title, names, debianPackage, variable }: Program): string {
  const found = process.env[variable] ?? firstOf(names);
  if (found) return found;
  if (process.getuid?.() !== 0 || !firstOf(["apt-get"])) {
    throw new Error(
      `Install ${title} (Debian: the package ${debianPackage}), or set ${variable} to where it is.`,
    );
  }
  aptGet(title, "update");
  aptGet(title, "install", "--yes", "--no-install-recommends", debianPackage);
  const installed = firstOf(names);
  if (!installed) throw new Error(`The package ${debianPackage} was installed but has no command.`);
  return installed;
}

function aptGet(title: string, ...args: string[]): void {
  try {
    const env = { ...process.env, DEBIAN_FRONTEND: "noninteractive" };
    execFileSync("apt-get", ["--quiet", ...args], { stdio: "pipe", encoding: "utf8", env });
  } catch (cause) {
    const { stdout, stderr } = cause as { stdout: string; stderr: string };
    throw new Error(`${title} could not be installed: apt-get said\n${stdout}${stderr}`, { cause });
  }
}

function firstOf(names: readonly string[]): string | undefined {
  const folders = [...(process.env.PATH ?? "").split(delimiter), ...ALSO_IN];
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
