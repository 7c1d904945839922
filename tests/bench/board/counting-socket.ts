import type { WsSocketFactory } from "@nats-io/nats-core";
import WebSocket from "ws";

/** A WebSocket that counts what comes over the network, squeezed as a browser would ask for it. */
export class CountingSocket {
  #opened: WebSocket | undefined;

  readonly socket: WsSocketFactory = async (address) => {
    this.#opened = new WebSocket(address);
    this.#opened.binaryType = "arraybuffer";
    return { socket: this.#opened as unknown as globalThis.WebSocket, encrypted: false };
  };

  /** Of the connection opened last. */
  get bytes(): number {
    const { _socket: beneath } = this.#opened as unknown as { _socket: { bytesRead: number } };
    return beneath.bytesRead;
  }
}
