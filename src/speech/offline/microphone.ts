/** The microphone's sound, as it comes, on a message port. */
import { Alarm, systemClock } from "../clock.ts";
import workletAddress from "./microphone-worklet.ts?worker&url";
import { SOUND_RATE_HZ } from "./suppressor.ts";

export interface Microphone {
  /** Pieces of sound (`Piece`), from the moment it was opened on. */
  sound: MessagePort;
  rateHz: number;
}

/**
 * Opens it; fails as `getUserMedia` does.
 * @param onLost why no more sound will come
 * @param over closes it, also where it hangs half open: one left open keeps the browser's own ears deaf
 */
export type OpenMicrophone = (
  onLost: (why: string) => void,
  over: AbortSignal,
) => Promise<Microphone>;

/** A change of headset mutes it for less, a call for longer. A choice of our own. */
export const MUTED_LIMIT_MS = 5_000;

/**
 * The browser's own cleaning stays off: it is made for calls, and the suppressor was measured
 * without it.
 */
const WANTED: MediaTrackConstraints = {
  channelCount: 1,
  echoCancellation: false,
  noiseSuppression: false,
  autoGainControl: true,
};

export const openMicrophone: OpenMicrophone = async (onLost, over) => {
  const stream = await navigator.mediaDevices.getUserMedia({ audio: WANTED });
  const closers = [() => stopTracks(stream)];
  const close = () => {
    for (const closer of closers.splice(0)) closer();
  };
  over.addEventListener("abort", close);
  try {
    over.throwIfAborted();
    const { context, source } = connect(stream);
    closers.push(() => {
      context.onstatechange = null;
      void context.close();
    });
    await context.audioWorklet.addModule(workletAddress);
    await context.resume();
    // A call or the system may halt it; when it lasts, the watch over the sound notices.
    context.onstatechange = () => void context.resume().catch(() => {});
    const gatherer = new AudioWorkletNode(context, "gatherer", { numberOfOutputs: 0 });
    gatherer.onprocessorerror = () => onLost("the worklet failed");
    const { port1, port2 } = new MessageChannel();
    gatherer.port.postMessage(port1, [port1]);
    source.connect(gatherer);
    for (const track of stream.getTracks()) closers.push(watchTrack(track, onLost));
    return { sound: port2, rateHz: context.sampleRate };
  } catch (cause) {
    close();
    throw cause;
  }
};

/**
 * A muted track goes on giving silence, and nothing says when that ends: in a call, or for good.
 * @returns the end of the watch
 */
function watchTrack(track: MediaStreamTrack, onLost: (why: string) => void): () => void {
  const alarm = new Alarm(systemClock);
  const look = () => {
    if (track.muted) alarm.set(() => onLost("the track stays muted"), MUTED_LIMIT_MS);
    else alarm.clear();
  };
  track.onended = () => onLost("the track ended");
  track.onmute = look;
  track.onunmute = look;
  look();
  return () => {
    alarm.clear();
    track.onended = null;
    track.onmute = null;
    track.onunmute = null;
  };
}

/**
 * At the suppressor's rate where the browser converts, else at the microphone's own: Firefox
 * connects only what has one rate (mozilla bug 1674892).
 */
function connect(stream: MediaStream) {
  const at = (options: AudioContextOptions) => {
    const context = new AudioContext(options);
    return { context, source: context.createMediaStreamSource(stream) };
  };
  try {
    return at({ sampleRate: SOUND_RATE_HZ });
  } catch (cause) {
    if ((cause as Error).name !== "NotSupportedError") throw cause;
    return at({});
  }
}

function stopTracks(stream: MediaStream): void {
  for (const track of stream.getTracks()) track.stop();
}
