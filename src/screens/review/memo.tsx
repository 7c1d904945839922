import { useState } from "preact/hooks";
import { memoWords as words } from "../../words/memo.ts";
import type { App } from "../app.ts";

/** Plays the sound of what was said, where it is kept. @param id of the entry or line */
export function Memo({ app, id }: { app: App; id: string }) {
  const [isPlaying, setPlaying] = useState(false);
  if (!app.voice.memos.value.has(id)) return null;
  const play = async () => {
    setPlaying(true);
    await app.voice.playMemo(id);
    setPlaying(false);
  };
  return (
    <button type="button" class="button" disabled={isPlaying} onClick={() => void play()}>
      {isPlaying ? words.playing : words.listen}
    </button>
  );
}
