/** A board on several servers, any one of which may be lost. Source: docs.nats.io, "JetStream Clustering". */
import type { StreamConfig } from "@nats-io/jetstream";
import { streamConfig } from "./configuration.ts";

export interface Member {
  /** Each server's own. */
  name: string;
  /** Where the others reach it. */
  host: string;
  port: number;
}

/**
 * A server's configuration as one of several; all else, the trust above all, is the same on each.
 * @param members all of them, this one too
 */
export const clusterConfiguration = (
  configuration: string,
  { name, host, port }: Member,
  members: readonly Member[],
): string =>
  `${configuration}server_name: ${name}
cluster {
  name: pegscribe, host: ${JSON.stringify(host)}, port: ${port}
  routes: [${members.map((one) => JSON.stringify(`nats-route://${one.host}:${one.port}`)).join(", ")}]
}
`;

/** Kept whole on each of three servers: taken once two of them have it. */
export const replicated = (board: string, mostBytes: number) =>
  ({ ...streamConfig(board, mostBytes), num_replicas: 3 }) satisfies Partial<StreamConfig>;
