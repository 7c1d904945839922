/** A clerk who sits in a worker. */
import { type StoreReason, StoreTrouble } from "../../log/trouble.ts";
import type { Answers, Asked, Clerk, OnProgress } from "./clerk.ts";
import type { Progress } from "./digest-keeper.ts";

export interface ToClerk {
  number: number;
  asked: Asked;
}

export type FromClerk = { number: number } & (
  | { progress: Progress }
  | { answer: Answers[keyof Answers] }
  | { trouble: StoreReason }
);

interface Waiting {
  asked: Asked;
  onProgress: OnProgress | undefined;
  resolve(answer: Answers[keyof Answers] | Promise<Answers[keyof Answers]>): void;
  reject(trouble: StoreTrouble): void;
}

/**
 * @param worker runs `season-worker.ts`
 * @param standIn does the work from then on, if the worker does not arrive or falls over
 */
export function distantClerk(
  worker: Pick<Worker, "postMessage" | "onmessage" | "onerror">,
  standIn: () => Clerk,
): Clerk {
  const waiting = new Map<number, Waiting>();
  let last = 0;
  let here: Clerk | undefined;
  worker.onmessage = ({ data }: MessageEvent<FromClerk>) => {
    const one = waiting.get(data.number);
    if (!one) return;
    if ("progress" in data) {
      one.onProgress?.(data.progress);
      return;
    }
    waiting.delete(data.number);
    if ("answer" in data) one.resolve(data.answer);
    else one.reject(new StoreTrouble(data.trouble));
  };
  worker.onerror = () => {
    here ??= standIn();
    for (const { asked, onProgress, resolve } of waiting.values())
      resolve(here.ask(asked, onProgress));
    waiting.clear();
  };
  const ask = (asked: Asked, onProgress?: OnProgress) =>
    here?.ask(asked, onProgress) ??
    new Promise((resolve: Waiting["resolve"], reject) => {
      last += 1;
      waiting.set(last, { asked, onProgress, resolve, reject });
      worker.postMessage({ number: last, asked } satisfies ToClerk);
    });
  return { ask: ask as Clerk["ask"] };
}
