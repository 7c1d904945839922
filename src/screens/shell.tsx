/** The frame around every screen: where we are, the way to the others, and what needs saying. */
import "../ui/theme.css";
import "../ui/base.css";
import "../ui/controls.css";
import "./shell.css";
import type { FunctionComponent } from "preact";
import { useEffect, useErrorBoundary, useMemo, useRef } from "preact/hooks";
import { later } from "../ui/later.tsx";
import { appWords } from "../words/app.ts";
import type { App } from "./app.ts";
import { Live } from "./live/live.tsx";
import { Nav } from "./nav.tsx";
import { Notices } from "./notices.tsx";
import { followAddress, type Route } from "./routes.ts";
import { Spoken } from "./spoken.tsx";
import { Where } from "./where.tsx";

type Screen = FunctionComponent<{ app: App }>;

/** Live is here from the start; the others come when they are first opened. */
const SCREENS: Readonly<Record<Route["id"], Screen>> = {
  live: Live,
  review: later(async () => (await import("./review/review.tsx")).Review),
  summary: later(async () => (await import("./summary/summary.tsx")).SummaryScreen),
  "set-up": later(async () => (await import("./set-up/set-up.tsx")).SetUpScreen),
  more: later(async () => (await import("./more/more.tsx")).More),
  sessions: later(async () => (await import("./sessions/sessions.tsx")).SessionsScreen),
  phrases: later(async () => (await import("./phrases/phrases.tsx")).Phrases),
  files: later(async () => (await import("./files/files.tsx")).Files),
  shared: later(async () => (await import("./shared/shared.tsx")).SharedScreen),
  board: later(async () => (await import("./board/board.tsx")).BoardScreen),
  join: later(async () => (await import("./join/join.tsx")).JoinScreen),
  drill: later(async () => (await import("./drill/drill.tsx")).DrillScreen),
  guide: later(async () => (await import("./first-run/first-run.tsx")).FirstRun),
  settings: later(async () => (await import("./settings/settings.tsx")).SettingsScreen),
};

export function Shell({ app }: { app: App }) {
  const { route, stop } = useMemo(
    () => followAddress(() => (app.home.isNew.peek() ? "guide" : "live")),
    [],
  );
  useEffect(() => stop, [stop]);
  const { hand, lights } = app.settings.value;
  useEffect(() => {
    Object.assign(document.documentElement.dataset, { hand, lights });
  }, [hand, lights]);
  const { id, name } = route.value;
  return (
    <div class="shell">
      <header class="masthead">
        <p class="masthead-name">{appWords.name}</p>
        <Where app={app} />
      </header>
      <Opened key={id} app={app} name={name} screen={SCREENS[id]} />
      <Nav app={app} current={route.value} />
      <Spoken app={app} />
    </div>
  );
}

interface OpenedProps {
  app: App;
  name: string;
  screen: Screen;
}

/** One screen. When it is opened, reading by ear and by keyboard starts at its top. */
function Opened({ app, name, screen: Screen }: OpenedProps) {
  const [error, retry] = useErrorBoundary();
  const top = useRef<HTMLElement>(null);
  useEffect(() => {
    const isFirst = document.activeElement === document.body && document.title === appWords.name;
    document.title = `${name} · ${appWords.name}`;
    top.current?.scrollTo?.(0, 0);
    if (!isFirst) top.current?.focus();
  }, [name]);
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be within the keyboard's reach
    <main class="screen" ref={top} tabIndex={0} aria-label={name}>
      <Notices app={app} />
      {error ? <NotOpened retry={retry} /> : <Screen app={app} />}
    </main>
  );
}

function NotOpened({ retry }: { retry: () => void }) {
  const { title, about, again } = appWords.notOpened;
  return (
    <section class="ticket">
      <h1>{title}</h1>
      <p>{about}</p>
      <button type="button" class="button button-main" onClick={retry}>
        {again}
      </button>
    </section>
  );
}
