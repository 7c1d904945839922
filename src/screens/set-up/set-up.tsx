/** What is named before fishing. */
import "./set-up.css";
import { setUpWords } from "../../words/set-up.ts";
import type { App } from "../app.ts";
import { Limits } from "./limits.tsx";
import { Listening } from "./listening.tsx";
import { OwnWords } from "./own-words.tsx";
import { Reminder } from "./reminder.tsx";
import { Rigs } from "./rigs.tsx";
import { Sinking } from "./sinking.tsx";
import { Visit } from "./visit.tsx";

export function SetUpScreen({ app }: { app: App }) {
  return (
    <>
      <h1>{setUpWords.title}</h1>
      <p>{setUpWords.about}</p>
      <div class="tickets">
        <Visit app={app} />
        <Listening app={app} />
        <Limits app={app} />
        <Rigs app={app} />
        <Sinking app={app} />
        <Reminder app={app} />
        <OwnWords app={app} />
      </div>
    </>
  );
}
