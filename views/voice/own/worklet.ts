/** What an audio worklet has in its scope: of it, what is used here. */
declare const registerProcessor: (name: string, processor: new () => AudioWorkletProcessor) => void;
declare class AudioWorkletProcessor {
  readonly port: MessagePort;
}

/** So much sound goes to the worker at a time: 20 ms at 48 kHz. */
const CHUNK = 960;

/** Hands the sound of the microphone to the worker, past the page. */
class SoundToWorker extends AudioWorkletProcessor {
  #to: MessagePort | null = null;
  #chunk = new Float32Array(CHUNK);
  #filled = 0;

  constructor() {
    super();
    this.port.onmessage = ({ data }: MessageEvent<MessagePort>) => {
      this.#to = data;
    };
  }

  process([input]: Float32Array[][]): boolean {
    const sound = input?.[0];
    if (!sound) return true;
    for (let at = 0; at < sound.length; ) {
      const many = Math.min(sound.length - at, CHUNK - this.#filled);
      this.#chunk.set(sound.subarray(at, at + many), this.#filled);
      this.#filled += many;
      at += many;
      if (this.#filled < CHUNK) continue;
      this.#to?.postMessage(this.#chunk, [this.#chunk.buffer]);
      this.#chunk = new Float32Array(CHUNK);
      this.#filled = 0;
    }
    return true;
  }
}
registerProcessor("sound-to-worker", SoundToWorker);
