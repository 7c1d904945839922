/** The one place where the app opens a connection to a board. */
import {
  jwtAuthenticator,
  type NatsConnection,
  type WsSocketFactory,
  wsconnect,
} from "@nats-io/nats-core";
import type { Invitation } from "./invitation.ts";
import { inboxOf } from "./subjects.ts";

const CONNECT_MS = 10_000;
/** A dead network is noticed after two pings without an answer. */
const PING_MS = 20_000;

export type Credentials = Pick<Invitation, "address" | "seat" | "jwt" | "seed">;

/**
 * Connects once. What is lost later is not mended here: whoever uses the connection makes a new one
 * and goes on from what it knows, so that there is one way back and not two.
 * @param socket makes WebSockets where the platform has none
 */
export function connectTo(
  { address, seat, jwt, seed }: Credentials,
  socket?: WsSocketFactory,
): Promise<NatsConnection> {
  return wsconnect({
    servers: address,
    authenticator: jwtAuthenticator(jwt, new TextEncoder().encode(seed)),
    inboxPrefix: inboxOf(seat),
    name: seat,
    reconnect: false,
    ignoreClusterUpdates: true,
    timeout: CONNECT_MS,
    pingInterval: PING_MS,
    ...(socket && { wsFactory: socket }),
  });
}
