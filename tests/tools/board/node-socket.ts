import type { WsSocketFactory } from "@nats-io/nats-core";
import WebSocket from "ws";

/** WebSockets for Node 20, which has none of its own. */
export const nodeSocket: WsSocketFactory = async (address) => {
  const socket = new WebSocket(address);
  socket.binaryType = "arraybuffer";
  return {
    socket: socket as unknown as globalThis.WebSocket,
    encrypted: address.startsWith("wss"),
  };
};
