/** The screens, their names, and the part of the address that opens each. */
import { type ReadonlySignal, signal } from "@preact/signals";
import { appWords } from "../words/app.ts";

interface Way {
  id: keyof typeof appWords.screens;
  /** In the bar at the foot of every screen, in the list under "More", or behind a link alone. */
  place: "bar" | "more" | "link";
}

const WAYS = [
  { id: "live", place: "bar" },
  { id: "review", place: "bar" },
  { id: "summary", place: "bar" },
  { id: "set-up", place: "bar" },
  { id: "more", place: "bar" },
  { id: "sessions", place: "more" },
  { id: "phrases", place: "more" },
  { id: "settings", place: "more" },
  { id: "files", place: "more" },
  { id: "drill", place: "more" },
  { id: "guide", place: "more" },
  { id: "board", place: "more" },
  { id: "shared", place: "link" },
  { id: "join", place: "link" },
] as const satisfies readonly Way[];

/** A screen that can be opened. */
export const ROUTES = WAYS.map((way) => ({ ...way, ...appWords.screens[way.id] }));

export type Route = (typeof ROUTES)[number];

/** The screen an address names; Live where it names one that is not there. */
export const routeOf = (hash: string): Route => {
  const named = IS_SHARED.test(hash) ? "shared" : hash.slice(1).split("?")[0];
  return ROUTES.find(({ id }) => id === named) ?? (ROUTES[0] as Route);
};

/** A session that somebody passed on stands behind the hash itself, after its version. */
const IS_SHARED = /^#v\d+\./;

/**
 * The screen that the address bar names, followed until `stop` is called.
 * @param home the screen of an address that names none
 */
export function followAddress(home: () => Route["id"]) {
  const named = () => routeOf(location.hash || `#${home()}`);
  const route = signal(named());
  const follow = () => {
    route.value = named();
  };
  addEventListener("hashchange", follow);
  return {
    route: route as ReadonlySignal<Route>,
    stop: () => removeEventListener("hashchange", follow),
  };
}
