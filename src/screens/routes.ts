/** The screens, their names, and the part of the address that opens each. */
import { type ReadonlySignal, signal } from "@preact/signals";
import { appWords } from "../words/app.ts";

interface Way {
  id: keyof typeof appWords.screens;
  /** In the bar at the foot of every screen, or in the list under "More". */
  place: "bar" | "more";
}

const WAYS = [
  { id: "live", place: "bar" },
  { id: "review", place: "bar" },
  { id: "summary", place: "bar" },
  { id: "set-up", place: "bar" },
  { id: "more", place: "bar" },
  { id: "phrases", place: "more" },
  { id: "settings", place: "more" },
] as const satisfies readonly Way[];

/** A screen that can be opened. */
export const ROUTES = WAYS.map((way) => ({ ...way, ...appWords.screens[way.id] }));

export type Route = (typeof ROUTES)[number];

/** The screen an address names; the first where it names none. */
export const routeOf = (hash: string): Route =>
  ROUTES.find(({ id }) => `#${id}` === hash) ?? (ROUTES[0] as Route);

/** The screen that the address bar names, followed until `stop` is called. */
export function followAddress(): { route: ReadonlySignal<Route>; stop: () => void } {
  const route = signal(routeOf(location.hash));
  const follow = () => {
    route.value = routeOf(location.hash);
  };
  addEventListener("hashchange", follow);
  return { route, stop: () => removeEventListener("hashchange", follow) };
}
