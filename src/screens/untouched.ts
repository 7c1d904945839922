import { routeOf } from "./routes.ts";

/**
 * Whether loading the page again would be noticed by nobody: it shows Live, which holds nothing but
 * what is in its field, and nobody has touched it for some seconds, where browsers tell.
 */
export const isUntouched = (page: Document): boolean =>
  routeOf(location.hash).id === "live" &&
  !navigator.userActivation?.isActive &&
  ![...page.querySelectorAll("input")].some(({ value }) => value !== "");
