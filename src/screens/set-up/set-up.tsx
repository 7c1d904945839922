/** What is named before fishing. */
import "./set-up.css";
import type { App } from "../app.ts";
import { Limits } from "./limits.tsx";
import { Listening } from "./listening.tsx";
import { OwnWords } from "./own-words.tsx";
import { Visit } from "./visit.tsx";

export function SetUpScreen({ app }: { app: App }) {
  return (
    <>
      <h1>Set-up</h1>
      <p>
        Everything here may be left empty. It is kept with the session as soon as it is entered.
      </p>
      <div class="tickets">
        <Visit app={app} />
        <Listening app={app} />
        <Limits app={app} />
        <OwnWords app={app} />
      </div>
    </>
  );
}
