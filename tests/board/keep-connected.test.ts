/** Staying with a board, with connections that a test makes and breaks. */
import { errors, type NatsConnection } from "@nats-io/nats-core";
import { expect, test, vi } from "vitest";
import { type KeepOptions, KeptConnection } from "../../src/board/keep-connected.ts";
import { stopTime } from "../stopped-time.ts";

stopTime();

const INVITATION = { address: "ws://127.0.0.1", board: "b", seat: "s", jwt: "a.b.c", seed: "S" };

/** Counts what is done, and breaks connections when told to. */
function line(options: Partial<KeepOptions> = {}) {
  const signals: AbortSignal[] = [];
  const troubles: string[] = [];
  let lose = (_: Error) => {};
  const connect = vi.fn(async () => {
    let isClosed = false;
    const closed = new Promise<Error>((done) => {
      lose = (cause) => {
        isClosed = true;
        done(cause);
      };
    });
    return {
      closed: () => closed,
      isClosed: () => isClosed,
      close: async () => lose(new errors.ClosedConnectionError()),
    } as unknown as NatsConnection;
  });
  const kept = new KeptConnection({
    ...{ invitation: INVITATION, connect, random: () => 1 },
    onTrouble: (reason) => troubles.push(reason),
    work: (_connection, _progress, stop) => {
      signals.push(stop);
      return new Promise(() => {});
    },
    ...options,
  });
  return { kept, connect, signals, troubles, lose: (cause: Error) => lose(cause) };
}

test("what was begun with a lost connection is told to stop, and begun anew with the next", async () => {
  const { kept, signals, troubles, lose } = line();
  await vi.advanceTimersByTimeAsync(0);
  expect(signals.map(({ aborted }) => aborted)).toEqual([false]);
  lose(new errors.ConnectionError("gone"));
  await vi.advanceTimersByTimeAsync(1000);
  expect(signals.map(({ aborted }) => aborted)).toEqual([true, false]);
  expect(troubles).toEqual(["out-of-reach"]);
  kept.stop();
  await vi.advanceTimersByTimeAsync(0);
  expect(signals.map(({ aborted }) => aborted)).toEqual([true, true]);
});

test("waits longer each time that nothing comes of it, a minute at most", async () => {
  const connect = vi.fn(async () => Promise.reject(new Error("no way there")));
  const { kept } = line({ connect });
  const tries: number[] = [];
  for (const seconds of [0, 1, 2, 4, 8, 16, 32, 60, 60]) {
    await vi.advanceTimersByTimeAsync(seconds * 1000);
    tries.push(connect.mock.calls.length);
  }
  expect(tries).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9]);
  kept.stop();
  await vi.advanceTimersByTimeAsync(120_000);
  expect(connect).toHaveBeenCalledTimes(9);
});

test("waits short again once the board has given or taken something", async () => {
  let isUp = false;
  const { kept, connect, lose } = line({
    work: (_connection, progress) => {
      if (isUp) progress();
      return isUp ? new Promise(() => {}) : Promise.reject(new Error("cut off"));
    },
  });
  await vi.advanceTimersByTimeAsync(15_000);
  expect(connect).toHaveBeenCalledTimes(5);
  isUp = true;
  await vi.advanceTimersByTimeAsync(16_000);
  expect(connect).toHaveBeenCalledTimes(6);
  lose(new errors.ConnectionError("gone"));
  await vi.advanceTimersByTimeAsync(1000);
  expect(connect).toHaveBeenCalledTimes(7);
  kept.stop();
});

test("a refusal is asked again after a quarter of an hour, or when there is reason to", async () => {
  const connect = vi.fn(async () =>
    Promise.reject(new errors.AuthorizationError("Authorization Violation")),
  );
  const { kept, troubles } = line({ connect });
  await vi.advanceTimersByTimeAsync(14 * 60_000);
  expect([connect.mock.calls.length, troubles]).toEqual([1, ["refused"]]);
  kept.hurry();
  await vi.advanceTimersByTimeAsync(0);
  expect(connect).toHaveBeenCalledTimes(2);
  await vi.advanceTimersByTimeAsync(15 * 60_000);
  expect(connect).toHaveBeenCalledTimes(3);
  kept.stop();
});

test("an answer that came too late is no wrong answer", async () => {
  const late = new errors.AuthorizationError("Authentication Timeout");
  const { kept, troubles } = line({ connect: () => Promise.reject(late) });
  await vi.advanceTimersByTimeAsync(0);
  expect(troubles).toEqual(["out-of-reach"]);
  kept.stop();
});
