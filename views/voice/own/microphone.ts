import { MICROPHONE_RATE } from "./decimator.ts";

/** The sound of this phone's microphone on its way to a worker. `close` lets go of the microphone. */
export type Microphone = { readonly sound: MessagePort; readonly close: () => void };

/** The browser takes out its own loudspeaker and some of the noise before we do. */
const WANTED: MediaTrackConstraints = { channelCount: 1, echoCancellation: true, noiseSuppression: true, autoGainControl: true };

/**
 * Opens the microphone. `worklet` is the path of `worklet.ts`; `ended` is told when the phone takes the microphone away. Rejects as
 * `getUserMedia` does, or where the browser cannot hand over its sound at 48 kHz.
 */
export async function openMicrophone(worklet: string, ended: () => void): Promise<Microphone> {
  const stream = await navigator.mediaDevices.getUserMedia({ audio: WANTED });
  const context = new AudioContext({ sampleRate: MICROPHONE_RATE });
  const wake = () => {
    if (document.visibilityState === "visible" && context.state !== "running") void context.resume();
  };
  // Some browsers let no sound run before somebody has pressed anything.
  const occasions = ["visibilitychange", "pointerdown", "keydown"];
  const close = () => {
    for (const occasion of occasions) document.removeEventListener(occasion, wake);
    for (const track of stream.getTracks()) track.stop();
    void context.close();
  };
  try {
    await context.audioWorklet.addModule(worklet);
    const node = new AudioWorkletNode(context, "sound-to-worker", { numberOfOutputs: 0 });
    const { port1, port2 } = new MessageChannel();
    node.port.postMessage(port1, [port1]);
    context.createMediaStreamSource(stream).connect(node);
    for (const occasion of occasions) document.addEventListener(occasion, wake);
    await context.resume();
    for (const track of stream.getTracks()) track.onended = ended;
    return { sound: port2, close };
  } catch (error) {
    close();
    throw error;
  }
}
