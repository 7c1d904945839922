/**
 * To go into a page before any function that is sent there as text: what runs TypeScript may have
 * put names on functions, by a call that a page does not know.
 */
export const LETS_NAMES_BE = "globalThis.__name ??= (named) => named";
