/** The log as files, out and in. */
import { filesWords } from "../../words/files.ts";
import type { App } from "../app.ts";
import { Keep } from "./keep.tsx";
import { TakeIn } from "./take-in.tsx";

export function Files({ app }: { app: App }) {
  return (
    <>
      <h1>{filesWords.title}</h1>
      <div class="tickets">
        <Keep app={app} />
        <TakeIn app={app} />
      </div>
    </>
  );
}
