/** Goes into a page beside the app: tells when a log begins to be brought up to date, and when it is. */

/** What the page reports. */
export type Upgrading = "begun" | "done";

/** Self-contained, since it is sent to the page as text. @param address where reports are taken */
export function installUpgradeWatch(address: string): void {
  const socket = new WebSocket(address);
  const report = (what: Upgrading) => {
    if (socket.readyState === WebSocket.OPEN) socket.send(what);
    else socket.addEventListener("open", () => socket.send(what));
  };
  const { open } = IDBFactory.prototype;
  IDBFactory.prototype.open = function (name, version) {
    const opening = open.call(this, name, version);
    opening.addEventListener("upgradeneeded", ({ oldVersion }) => {
      if (oldVersion === 0) return;
      report("begun");
      opening.transaction?.addEventListener("complete", () => report("done"));
    });
    return opening;
  };
}
