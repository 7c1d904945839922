/** A page whose hours pass faster, and what it notes down of its frames; put there before the app. */

export interface LongRun {
  /** Milliseconds between frames. */
  frames: number[];
}

declare global {
  interface Window {
    longRun: LongRun;
  }
}

/** Self-contained, since it is sent to the page as text. @param speed so many times faster */
export function installPaced(speed: number): void {
  const [wall, steady] = [Date.now.bind(Date), performance.now.bind(performance)];
  const [wallFrom, steadyFrom] = [wall(), steady()];
  Date.now = () => wallFrom + speed * (wall() - wallFrom);
  performance.now = () => steadyFrom + speed * (steady() - steadyFrom);
  const { setTimeout: timeout, setInterval: interval } = window;
  window.setTimeout = ((run: () => void, ms = 0, ...given: unknown[]) =>
    timeout(run, ms / speed, ...given)) as typeof setTimeout;
  window.setInterval = ((run: () => void, ms = 0, ...given: unknown[]) =>
    interval(run, ms / speed, ...given)) as typeof setInterval;
  window.longRun = { frames: [] };
  let last = steady();
  const onFrame = () => {
    const now = steady();
    window.longRun.frames.push(now - last);
    last = now;
    requestAnimationFrame(onFrame);
  };
  requestAnimationFrame(onFrame);
}
