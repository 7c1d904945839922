/** A nats-server's configuration for a board, and the stream in it. */
import type { StreamConfig } from "@nats-io/jetstream";
import { MOST_BYTES } from "../../../src/board/message.ts";
import { streamOf, subjectsOf } from "../../../src/board/subjects.ts";
import type { Trust } from "./credentials.ts";

/** Around a message there are its subject, its id and the stream's own bookkeeping. */
const HEADROOM_BYTES = 4096;

export interface Place {
  /** Where phones reach it. */
  host: string;
  port: number;
  storeFolder: string;
  mostBytes: number;
  /** Certificate, key and the name they are for, for `wss:`; without them the board is for one machine, or behind a proxy. */
  tls?: { certificate: string; key: string; name: string };
}

/** The text of the configuration file. The plain protocol's port is for this machine alone. */
export function configuration(trust: Trust, place: Place): string {
  const { host, port, storeFolder, mostBytes, tls } = place;
  const security = tls
    ? `tls { cert_file: ${JSON.stringify(tls.certificate)}, key_file: ${JSON.stringify(tls.key)} }`
    : "no_tls: true";
  return `# Who is trusted: statements signed by this operator's accounts, and nothing else.
operator: ${trust.operatorJwt}
system_account: ${trust.system.key}
resolver: MEMORY
resolver_preload {
  ${trust.system.key}: ${trust.system.jwt}
  ${trust.account.key}: ${trust.account.jwt}
}
# Phones come by WebSocket; the plain protocol answers nobody outside this machine.
host: "127.0.0.1"
port: -1
websocket { host: ${JSON.stringify(host)}, port: ${port}, compression: true, handshake_timeout: "20s", ${security} }
# A slow network may take its time to answer who it is.
authorization { timeout: 15 }
max_payload: ${MOST_BYTES + HEADROOM_BYTES}
jetstream { store_dir: ${JSON.stringify(storeFolder)}, max_file_store: ${mostBytes} }
`;
}

/** A day: a message that is sent again later than this is told by the board from the event's id. */
const KNOWN_FOR_NS = 24 * 3600 * 1e9;
/** Thirty days; nothing on a board is meant to be the log. */
const KEPT_FOR_NS = 30 * 24 * 3600 * 1e9;

export const streamConfig = (board: string, mostBytes: number) =>
  ({
    name: streamOf(board),
    subjects: [subjectsOf(board)],
    storage: "file",
    retention: "limits",
    // A full board refuses what is new rather than forgetting what is there.
    discard: "new",
    max_bytes: mostBytes,
    max_age: KEPT_FOR_NS,
    max_msg_size: MOST_BYTES,
    duplicate_window: KNOWN_FOR_NS,
    // On this machine; a cluster keeps three.
    num_replicas: 1,
    deny_delete: true,
    deny_purge: true,
  }) satisfies Partial<StreamConfig>;
