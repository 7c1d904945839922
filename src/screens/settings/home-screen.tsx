import { settingsWords } from "../../words/settings.ts";
import type { App } from "../app.ts";

const { homeScreen: words } = settingsWords;

/** Whether the app stands on the home screen, and the way there. */
export function HomeScreenCard({ app: { home } }: { app: App }) {
  const state = home.homeScreen.value;
  return (
    <section class="ticket">
      <h2>{words.title}</h2>
      {state === "there" && <p>{words.there}</p>}
      {state === "by-menu" && <p>{words.byMenu}</p>}
      {state === "offered" && (
        <>
          <p>{words.offered}</p>
          <button type="button" class="button button-main" onClick={() => home.putOnHomeScreen()}>
            {words.button}
          </button>
        </>
      )}
    </section>
  );
}
