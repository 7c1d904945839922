/** How the phone serves the angler; kept on this device, not in the log. */
import { settingsWords } from "../../words/settings.ts";
import type { App } from "../app.ts";
import { Checks } from "./checks.tsx";
import { HomeScreenCard } from "./home-screen.tsx";
import { KeepingCard } from "./keeping.tsx";
import { Layout } from "./layout.tsx";
import { Talking } from "./talking.tsx";
import { WarningsCard } from "./warnings.tsx";

export function SettingsScreen({ app }: { app: App }) {
  return (
    <>
      <h1>{settingsWords.title}</h1>
      <p>{settingsWords.about}</p>
      <div class="tickets">
        <Talking app={app} />
        <WarningsCard app={app} />
        <Layout app={app} />
        <Checks />
        <KeepingCard app={app} />
        <HomeScreenCard app={app} />
      </div>
    </>
  );
}
