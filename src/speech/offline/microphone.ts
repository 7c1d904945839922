/** The microphone's sound, as it comes, on a message port. */
import workletAddress from "./microphone-worklet.ts?worker&url";
import { SOUND_RATE_HZ } from "./suppressor.ts";

export interface Microphone {
  /** Pieces of sound (`Piece`), from the moment it was opened on. */
  sound: MessagePort;
  rateHz: number;
  close(): void;
}

/** Opens it; fails as `getUserMedia` does. @param onLost why no more sound will come, once */
export type OpenMicrophone = (onLost: (why: string) => void) => Promise<Microphone>;

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

export const openMicrophone: OpenMicrophone = async (onLost) => {
  const stream = await navigator.mediaDevices.getUserMedia({ audio: WANTED });
  const closers = [() => stopTracks(stream)];
  const close = () => {
    for (const closer of closers.splice(0)) closer();
  };
  try {
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
    for (const track of stream.getTracks()) track.onended = () => onLost("the track ended");
    return { sound: port2, rateHz: context.sampleRate, close };
  } catch (cause) {
    close();
    throw cause;
  }
};

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
  for (const track of stream.getTracks()) {
    track.onended = null;
    track.stop();
  }
}
