import { useState } from "preact/hooks";
import { liveWords } from "../../words/live.ts";
import type { App } from "../app.ts";

const { typing: words } = liveWords;

/** A field that does the same as speaking. */
export function Typing({ app }: { app: App }) {
  const [text, setText] = useState("");
  const send = (event: Event) => {
    event.preventDefault();
    const phrase = text.trim();
    if (!phrase) return;
    setText("");
    void app.type(phrase);
  };
  return (
    <form class="typing" onSubmit={send}>
      <label class="for-ears" for="typing">
        {words.label}
      </label>
      <input
        id="typing"
        class="input"
        value={text}
        onInput={(event) => setText(event.currentTarget.value)}
        placeholder={words.example}
        autocomplete="off"
        autocapitalize="none"
        enterkeyhint="send"
        maxLength={400}
      />
      <button type="submit" class="button button-main">
        {words.enter}
      </button>
    </form>
  );
}
