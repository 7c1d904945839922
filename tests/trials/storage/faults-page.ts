/** What goes into the page before the app: faults of the browser's storage that a trial switches on. */

/**
 * `refused`: nothing can be opened, as in a private window; `cut`: the connection is closed whenever
 * it is to be used; `aborted`: what writes is broken off at its end.
 */
export type PageFault = "refused" | "cut" | "aborted";

declare global {
  interface Window {
    fault: PageFault | undefined;
    /** The notes of every tone, in Hz, in order. */
    notes: number[];
  }
}

/** Self-contained, since it is sent to the page as text. */
export function installFaults(fault: PageFault | undefined): void {
  window.fault = fault;
  window.notes = [];
  const { open } = IDBFactory.prototype;
  IDBFactory.prototype.open = function (...args) {
    if (window.fault === "refused") throw new DOMException("no", "SecurityError");
    return open.apply(this, args);
  };
  const { transaction } = IDBDatabase.prototype;
  IDBDatabase.prototype.transaction = function (...args) {
    if (window.fault === "cut" || window.fault === "refused") this.close();
    return transaction.apply(this, args);
  };
  const { put } = IDBObjectStore.prototype;
  IDBObjectStore.prototype.put = function (...args) {
    const request = put.apply(this, args);
    if (window.fault === "aborted") this.transaction.abort();
    return request;
  };
  const { start } = OscillatorNode.prototype;
  OscillatorNode.prototype.start = function (when) {
    window.notes.push(this.frequency.value);
    return start.call(this, when);
  };
}
