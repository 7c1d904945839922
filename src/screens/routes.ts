/** The screens, their names, and the part of the address that opens each. */
import { type ReadonlySignal, signal } from "@preact/signals";

export const ROUTES = [
  { id: "live", name: "Live" },
  { id: "review", name: "Review" },
  { id: "summary", name: "Summary" },
  { id: "set-up", name: "Set-up" },
  { id: "phrases", name: "Phrases" },
] as const;

export type Route = (typeof ROUTES)[number];

/** The screen an address names; the first where it names none. */
export const routeOf = (hash: string): Route =>
  ROUTES.find(({ id }) => `#${id}` === hash) ?? ROUTES[0];

/** The screen that the address bar names, followed until `stop` is called. */
export function followAddress(): { route: ReadonlySignal<Route>; stop: () => void } {
  const route = signal(routeOf(location.hash));
  const follow = () => {
    route.value = routeOf(location.hash);
  };
  addEventListener("hashchange", follow);
  return { route, stop: () => removeEventListener("hashchange", follow) };
}
