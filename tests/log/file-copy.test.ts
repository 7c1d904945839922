import { afterEach, expect, test, vi } from "vitest";
import { fileOf } from "../../src/log/copy-folder.ts";
import { copyLines } from "../../src/log/copy-lines.ts";
import type { ToCopier } from "../../src/log/copy-worker.ts";
import type { LogEvent } from "../../src/log/event.ts";
import { FileCopy } from "../../src/log/file-copy.ts";

afterEach(() => vi.unstubAllGlobals());

const HOUR_MS = 3_600_000;

const event = (session: string, at = 1): LogEvent => ({
  ...{ v: 1, id: `id of ${session}`, session, device: "d", seq: 1, at, verdict: "log" },
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

/** Processor time, of which a loaded machine takes none away. */
const MOST_MS = 1000;

test("a session of very many events is soon handed over", () => {
  const { worker, asked } = scriptedWorker();
  const before = process.cpuUsage();
  void new FileCopy(worker).add(Array(50_000).fill(event("one")));
  const { user, system } = process.cpuUsage(before);
  expect(asked).toHaveLength(1);
  expect((user + system) / 1000).toBeLessThan(MOST_MS);
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

/** Has these in the copy, and in the log; another of each of its sessions is not in the copy. */
function scriptedFiles(copied: readonly LogEvent[], unreadable?: string) {
  const files = copied.map((event) => ({
    ...{ kind: "file", name: fileOf(event.session) },
    getFile: async () => {
      if (event.session === unreadable) throw new DOMException("gone", "NotFoundError");
      return { text: async () => copyLines([event]) };
    },
  }));
  const folder = {
    async *values() {
      yield* files;
    },
  };
  const getDirectory = async () => ({ getDirectoryHandle: async () => folder });
  vi.stubGlobal("navigator", { storage: { getDirectory } });
}

function storeOf(events: readonly LogEvent[], last: string, removed: readonly string[] = []) {
  return {
    sessions: async () =>
      events.map(({ session, at }) => ({ id: session, firstAt: at, lastAt: at })),
    session: async (id: string) =>
      events
        .filter(({ session }) => session === id)
        .flatMap((event) => [event, { ...event, id: `${event.id}, 2` }]),
    lastWritten: async () => ({ event: `id of ${last}`, session: last }),
    removals: async () => [...removed],
    put: async (events: readonly LogEvent[]) => [...events],
  };
}

async function askedOnCompleting(
  copied: readonly LogEvent[],
  store: ReturnType<typeof storeOf>,
): Promise<ToCopier[]> {
  const { worker, asked, done } = scriptedWorker();
  scriptedFiles(copied);
  let isDone = false;
  const completing = new FileCopy(worker).complete(store).then(() => {
    isDone = true;
  });
  for (let answered = 0; !isDone; await new Promise((next) => setTimeout(next)))
    while (answered < asked.length) done(asked[answered++]?.number ?? 0);
  await completing;
  return asked;
}

test("at a start the copy gets whole sessions it lacks, and the end of those of the last day", async () => {
  const long = event("long ago");
  const early = event("in the morning", 100 * HOUR_MS);
  const late = event("in the evening", 110 * HOUR_MS);
  const taken = event("taken in", 2);
  const store = storeOf([late, early, taken, long], late.session);
  const asked = await askedOnCompleting([late, early, long], store);
  expect(asked.map((one) => [one.session, "lines" in one && one.lines])).toEqual([
    [late.session, copyLines([{ ...late, id: `${late.id}, 2` }])],
    [early.session, copyLines([{ ...early, id: `${early.id}, 2` }])],
    [taken.session, copyLines([taken, { ...taken, id: `${taken.id}, 2` }])],
  ]);
});

test("at a start the copy loses sessions that were deleted, whatever kept it from that", async () => {
  const [here, gone] = [event("here"), event("gone")];
  const asked = await askedOnCompleting([here, gone], storeOf([], here.session, [gone.session]));
  expect(asked).toEqual([{ number: 1, session: gone.session, remove: true }]);
});

test("at a start the log gets back what the copy alone has, but nothing that was deleted", async () => {
  const [last, lost, gone] = [event("last", HOUR_MS), event("lost"), event("gone")];
  const store = storeOf([last], last.session, [gone.session]);
  store.session = async () => [];
  const put = vi.spyOn(store, "put");
  await askedOnCompleting([last, lost, gone], store);
  expect(put.mock.calls).toEqual([[[last]], [[lost]]]);
});

test("a file that cannot be read spoils no other", async () => {
  const { worker } = scriptedWorker();
  scriptedFiles([event("one"), event("two"), event("three")], "two");
  const { events } = await new FileCopy(worker).read();
  expect(events).toEqual([event("one"), event("three")]);
});

/** It took a hundred seconds where each event copied the row of those before it. */
test("a hundred thousand entries of one session stop nothing", { timeout: 20_000 }, async () => {
  const { worker, asked, done } = scriptedWorker();
  const events = Array.from({ length: 100_000 }, (_, n) => ({ ...event("long"), id: `${n}` }));
  const adding = new FileCopy(worker).add(events);
  done(1);
  await adding;
  expect(asked).toHaveLength(1);
});
