/** Stands in for the polyfill that `soundswallower` loads first: it needs a page, and workers have none. */
export const Blob = globalThis.Blob;
