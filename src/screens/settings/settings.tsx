/** How the phone serves the angler; kept on this device, not in the log. */
import { settingsWords } from "../../words/settings.ts";
import type { App } from "../app.ts";
import { Talking } from "./talking.tsx";

export function SettingsScreen({ app }: { app: App }) {
  return (
    <>
      <h1>{settingsWords.title}</h1>
      <p>{settingsWords.about}</p>
      <div class="tickets">
        <Talking app={app} />
      </div>
    </>
  );
}
