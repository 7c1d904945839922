/** From the end of a phrase to the tone that confirms it, timed inside the page. */

declare global {
  interface Window {
    /** Says a phrase; resolves with the milliseconds until its tone was started. */
    confirmed(phrase: string): Promise<number>;
  }
}

/** Self-contained, since it is sent to the page as text. It goes in after the scripted speech. */
export function installConfirm(): void {
  let onTone: (() => void) | undefined;
  const start = OscillatorNode.prototype.start;
  OscillatorNode.prototype.start = function (...when) {
    onTone?.();
    start.apply(this, when);
  };
  window.confirmed = (phrase) =>
    new Promise<number>((resolve, reject) => {
      const late = setTimeout(() => reject(new Error(`no tone for: ${phrase}`)), 20_000);
      const from = performance.now();
      onTone = () => {
        onTone = undefined;
        clearTimeout(late);
        resolve(performance.now() - from);
      };
      window.scripted.say([phrase], 0.9);
    });
}
