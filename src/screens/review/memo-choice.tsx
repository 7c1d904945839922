import { Choices } from "../../ui/choices.tsx";
import { memoWords as words } from "../../words/memo.ts";
import type { App } from "../app.ts";

/** Whether the sound of what is in doubt is kept. */
export function MemoChoice({ app }: { app: App }) {
  return (
    <>
      <Choices
        label={words.choice}
        options={[
          { value: "off", name: words.off },
          { value: "on", name: words.on },
        ]}
        value={app.settings.value.memos ? "on" : "off"}
        onChange={(value) => app.setSettings({ memos: value === "on" })}
      />
      <p>{words.what}</p>
    </>
  );
}
