import { useEffect, useState } from "preact/hooks";

export type Answered<T> =
  | { is: "waiting" }
  | { is: "there"; value: T }
  | { is: "failed"; why: string };

/**
 * What a promise comes to, asked again whenever one of `about` changes. The last answer stands until
 * the next is there; one that comes too late is passed over.
 */
export function useAnswer<T>(ask: () => Promise<T>, about: readonly unknown[]): Answered<T> {
  const [answered, setAnswered] = useState<Answered<T>>({ is: "waiting" });
  useEffect(() => {
    let isWanted = true;
    const take = (next: Answered<T>) => {
      if (isWanted) setAnswered(next);
    };
    ask().then(
      (value) => take({ is: "there", value }),
      (cause: unknown) =>
        take({ is: "failed", why: cause instanceof Error ? cause.message : String(cause) }),
    );
    return () => {
      isWanted = false;
    };
  }, about);
  return answered;
}
