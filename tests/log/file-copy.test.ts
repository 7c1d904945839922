import { expect, test, vi } from "vitest";
import type { ToCopier } from "../../src/log/copy-worker.ts";
import type { LogEvent } from "../../src/log/event.ts";
import { FileCopy } from "../../src/log/file-copy.ts";

const event = (session: string): LogEvent => ({
  ...{ v: 1, id: `id of ${session}`, session, device: "d", seq: 1, at: 1, verdict: "log" },
  body: { kind: "entry", statement: { kind: "drop" } },
});

function scriptedWorker() {
  const asked: ToCopier[] = [];
  const worker: Pick<Worker, "postMessage" | "onmessage" | "onerror"> = {
    postMessage: (message: ToCopier) => void asked.push(message),
    onmessage: null,
    onerror: null,
  };
  const done = (number: number) =>
    worker.onmessage?.call(worker as Worker, new MessageEvent("message", { data: number }));
  const fail = () => worker.onerror?.call(worker as Worker, new Event("error") as ErrorEvent);
  return { worker, asked, done, fail };
}

test("what is added is waited for, a file for each session", async () => {
  const { worker, asked, done } = scriptedWorker();
  const added = vi.fn();
  const adding = new FileCopy(worker).add([event("one"), event("two")], "d").then(added);
  expect(asked.map(({ session }) => session)).toEqual(["one", "two"]);
  done(1);
  await Promise.resolve();
  expect(added).not.toHaveBeenCalled();
  done(2);
  await adding;
});

test("a worker that falls over, or never arrived, is not waited for", async () => {
  const { worker, asked, fail } = scriptedWorker();
  const copy = new FileCopy(worker);
  const adding = copy.add([event("one")]);
  fail();
  await adding;
  await copy.add([event("two")]);
  expect(asked).toHaveLength(1);
});
