import { useSignal } from "@preact/signals";
import { Tick } from "../../ui/choices.tsx";
import type { App } from "../app.ts";

const OUTCOMES = {
  shared: "Sent.",
  copied: "Copied: paste it into a message.",
  cancelled: "Not sent.",
  failed: "This browser would neither send nor copy it. The text above can be marked and copied.",
} as const;

/** The text as it will go, and the button that sends it. */
export function Send({ app }: { app: App }) {
  const outcome = useSignal("");
  const withPlace = useSignal(false);
  const share = async () => {
    outcome.value = OUTCOMES[await app.shareSummary(withPlace.value)];
  };
  return (
    <section class="ticket" aria-labelledby="send">
      <h2 id="send">Send it</h2>
      <p>This is what goes out, and nothing else:</p>
      <Tick
        label="Name the water and the peg"
        value={withPlace.value}
        onChange={(is) => {
          withPlace.value = is;
        }}
      />
      <pre class="to-send">{textOf(app, withPlace.value)}</pre>
      <button type="button" class="button button-main" onClick={share}>
        Share the text
      </button>
      <p role="status">{outcome.value}</p>
    </section>
  );
}

/** The text is made from the session and the settings, and changes with them. */
function textOf(app: App, withPlace: boolean): string {
  void [app.session.value, app.settings.value];
  return app.summaryText(withPlace);
}
