import { useRef, useState } from "preact/hooks";

/**
 * A value that is changed faster than it is stored: each change builds on the one before it, and once
 * all are stored the stored value shows again.
 */
export function useDraft<T>(
  stored: T,
  save: (value: T) => Promise<unknown>,
): [value: T, change: (value: T) => void] {
  const [draft, setDraft] = useState<{ value: T }>();
  const waiting = useRef(0);
  const change = (value: T) => {
    waiting.current += 1;
    setDraft({ value });
    void save(value).finally(() => {
      waiting.current -= 1;
      if (waiting.current === 0) setDraft(undefined);
    });
  };
  return [draft ? draft.value : stored, change];
}
