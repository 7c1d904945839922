/**
 * A board on a small machine at the lake, which goes on with its phones while the line to the club's
 * servers is down, and a mirror of it there for those who look on from elsewhere.
 * Source: docs.nats.io, "JetStream on Leaf Nodes".
 */
import type { StreamConfig } from "@nats-io/jetstream";
import { streamOf } from "../../../src/board/subjects.ts";
import type { Credential } from "./credentials.ts";

/** Two servers that each keep streams must be told apart by a domain of their own. */
const inDomain = (configuration: string, domain: string): string =>
  `${configuration.replace("jetstream {", `jetstream { domain: ${domain},`)}server_name: ${domain}\n`;

/** @param port where lakes come in; phones come in where the configuration says */
export const hubConfiguration = (configuration: string, port: number): string =>
  `${inDomain(configuration, "hub")}leafnodes { host: "127.0.0.1", port: ${port} }\n`;

interface Line {
  /** The hub's, as `nats-leaf://host:port`. */
  url: string;
  /** The file of `credentialsFile`. */
  credentials: string;
  /** The account whose board it is. */
  account: string;
}

export const lakeConfiguration = (configuration: string, { url, credentials, account }: Line) =>
  `${inDomain(configuration, "lake")}leafnodes {
  remotes: [{ url: ${JSON.stringify(url)}, credentials: ${JSON.stringify(credentials)}, account: ${account} }]
}
`;

/** A credential as nats-server reads it from a file. */
export const credentialsFile = ({ jwt, seed }: Credential): string =>
  `-----BEGIN NATS USER JWT-----
${jwt}
------END NATS USER JWT------

-----BEGIN USER NKEY SEED-----
${seed}
------END USER NKEY SEED------
`;

/** The hub's copy of the lake's stream: same places, same times; nobody writes to it but the lake. */
export const mirrorConfig = (board: string, mostBytes: number) =>
  ({
    name: streamOf(board),
    storage: "file",
    max_bytes: mostBytes,
    mirror: { name: streamOf(board), external: { api: "$JS.lake.API" } },
  }) satisfies Partial<StreamConfig>;
