/** What the person who runs a board may say of it on the command line. */
import { parseArgs } from "node:util";

export interface RunOptions {
  board: string;
  seats: number;
  watchers: number;
  days: number;
  /** Where the app is, for the links. */
  app: string;
  /** Where phones reach the board; this machine alone where nothing is said. */
  host: string | undefined;
  port: number;
  tls: { certificate: string; key: string; name: string } | undefined;
  folder: string | undefined;
}

export const USAGE = `npm run board -- [options]
  --name osier         what the board is called: small letters, digits, "-"
  --seats 6            seats, an invitation each
  --watchers 1         invitations that only read
  --days 3             how long the invitations are good
  --app ADDRESS        where the app is (http://localhost:4173/, as npm start has it)
  --port 9222          the port for phones
  --host NAME          the name by which phones reach this machine, with the next two …
  --certificate FILE   … the certificate for that name, and
  --key FILE           … its key; without them something in front has to do the encrypting
  --folder FOLDER      where keys, invitations and messages are kept`;

/** @throws with a sentence for the person who typed it */
export function readOptions(args: readonly string[]): RunOptions {
  const text = { type: "string" } as const;
  const { values } = parseArgs({
    args: [...args],
    options: {
      ...{ name: { ...text, default: "osier" }, seats: { ...text, default: "6" } },
      ...{ watchers: { ...text, default: "1" }, days: { ...text, default: "3" } },
      ...{ app: { ...text, default: "http://localhost:4173/" }, host: text },
      ...{ port: { ...text, default: "9222" }, certificate: text, key: text, folder: text },
    },
  });
  const { name, certificate, key, host, app } = values;
  if (!/^[a-z0-9][a-z0-9-]{0,39}$/.test(name)) {
    throw new Error(`A board can't be called "${name}": small letters, digits and "-".`);
  }
  if (!URL.canParse(app)) throw new Error(`"${app}" is no address of an app.`);
  if ((certificate === undefined) !== (key === undefined)) {
    throw new Error("A certificate needs its key, and a key its certificate.");
  }
  if (certificate && !host) throw new Error("Say with --host which name the certificate is for.");
  return {
    ...{ board: name, host, app, folder: values.folder },
    seats: whole("seats", values.seats, 1000),
    watchers: whole("watchers", values.watchers, 1000),
    days: whole("days", values.days, 365),
    port: whole("port", values.port, 65_535),
    tls: certificate && key && host ? { certificate, key, name: host } : undefined,
  };
}

function whole(name: string, text: string, most: number): number {
  const number = Number(text);
  if (/^\d+$/.test(text) && number <= most) return number;
  throw new Error(`--${name} takes a whole number up to ${most}, not "${text}".`);
}
