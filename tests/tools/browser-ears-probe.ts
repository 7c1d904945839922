/** What a measuring script notes down inside the page, put there before the app. */

export interface Probe {
  /** How often a microphone was asked for. */
  opened: number;
  /** Stretches of sound as a meter on the same microphone saw them; wall times in milliseconds. */
  sounds: { from: number; to: number }[];
  heard: { at: number; text: string; endedAt: number }[];
  /** What the screen shows as heard last, each time it changes. */
  shown: { at: number; text: string }[];
  /** Takes the meter away, whose own work would be counted. */
  endMeter(): void;
}

declare global {
  interface Window {
    probe: Probe;
  }
}

/** Samples of a block of the meter, which tells of a sound two blocks late at most. */
export const METER_BLOCK = 1024;

/**
 * Self-contained, since it is sent to the page as text, and without named functions, for which the
 * script's runner adds a helper of its own. @param level above which there is sound
 */
export function installProbe([block, level]: readonly [number, number]): void {
  window.probe = { opened: 0, sounds: [], heard: [], shown: [], endMeter() {} };
  const { probe } = window;

  const open = navigator.mediaDevices.getUserMedia.bind(navigator.mediaDevices);
  navigator.mediaDevices.getUserMedia = async (wanted) => {
    probe.opened += 1;
    const stream = await open(wanted);
    const context = new AudioContext({ sampleRate: 48_000 });
    probe.endMeter = () => void context.close();
    const meter = context.createScriptProcessor(block, 1, 1);
    meter.onaudioprocess = ({ inputBuffer }) => {
      if (!inputBuffer.getChannelData(0).some((sample) => Math.abs(sample) > level)) return;
      const now = Date.now();
      const last = probe.sounds.at(-1);
      if (last && now - last.to < 300) last.to = now;
      else probe.sounds.push({ from: now, to: now });
    };
    context.createMediaStreamSource(stream).connect(meter).connect(context.destination);
    return stream;
  };

  window.Worker = class extends Worker {
    constructor(address: string | URL, options?: WorkerOptions) {
      super(address, options);
      this.addEventListener("message", ({ data }) => {
        if (data?.is === "heard")
          probe.heard.push({ at: Date.now(), text: data.text, endedAt: data.endedAt });
      });
    }
  };

  new MutationObserver(() => {
    const words = document.querySelector("[aria-label='Last heard'] .last-heard")?.textContent;
    const text = words?.replace(/[“”]/g, "") ?? "";
    if (text && text !== probe.shown.at(-1)?.text) probe.shown.push({ at: Date.now(), text });
  }).observe(document, { subtree: true, childList: true, characterData: true });
}
