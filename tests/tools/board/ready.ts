/** Before any test of a board: the server is there, and so is not installed by many tests at once. */
import { natsServerPath } from "./nats-server.ts";

export default function ready(): void {
  natsServerPath();
}
