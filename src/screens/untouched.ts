import { routeOf } from "./routes.ts";

/**
 * Whether loading the page again would be noticed by nobody: it shows Live, which holds nothing but
 * what is in its field, and nobody has touched it for some seconds, where browsers tell.
 */
export const isUntouched = (): boolean =>
  routeOf(location.hash).id === "live" &&
  !navigator.userActivation?.isActive &&
  ![...document.querySelectorAll("input")].some(({ value }) => value !== "");
