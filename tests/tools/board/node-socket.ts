import type { WsSocketFactory } from "@nats-io/nats-core";
import WebSocket, { type ClientOptions } from "ws";

/**
 * WebSockets for Node 20, which has none of its own.
 * @param name whose certificate is expected, where it is not the address's own
 */
export const socketTo =
  (name?: string): WsSocketFactory =>
  async (address) => {
    const expected: ClientOptions & { servername?: string } = name ? { servername: name } : {};
    const socket = new WebSocket(address, expected);
    socket.binaryType = "arraybuffer";
    return {
      socket: socket as unknown as globalThis.WebSocket,
      encrypted: address.startsWith("wss"),
    };
  };

export const nodeSocket = socketTo();
