/** The microphone's sound, as it comes, on a message port. */
import workletAddress from "./microphone-worklet.ts?worker&url";
import { SOUND_RATE_HZ } from "./suppressor.ts";

export interface Microphone {
  sound: MessagePort;
  close(): void;
}

/**
 * Opens it; fails as `getUserMedia` does. The browser's own cleaning stays off: it is made for
 * calls, and the suppressor was measured without it.
 * @param onLost the microphone was taken away
 */
export async function openMicrophone(onLost: () => void): Promise<Microphone> {
  const stream = await navigator.mediaDevices.getUserMedia({
    audio: {
      channelCount: 1,
      echoCancellation: false,
      noiseSuppression: false,
      autoGainControl: true,
    },
  });
  const context = new AudioContext({ sampleRate: SOUND_RATE_HZ });
  const close = () => {
    for (const track of stream.getTracks()) track.stop();
    context.close();
  };
  try {
    await context.audioWorklet.addModule(workletAddress);
    await context.resume();
    const gatherer = new AudioWorkletNode(context, "gatherer", { numberOfOutputs: 0 });
    const { port1, port2 } = new MessageChannel();
    gatherer.port.postMessage(port1, [port1]);
    context.createMediaStreamSource(stream).connect(gatherer);
    for (const track of stream.getTracks()) track.onended = onLost;
    return { sound: port2, close };
  } catch (cause) {
    close();
    throw cause;
  }
}
