/** Of the library's module, what is used here. */
export type NoiseModule = {
  readonly _malloc: (bytes: number) => number;
  readonly _rnnoise_create: (model: number) => number;
  readonly _rnnoise_process_frame: (state: number, out: number, input: number) => number;
  readonly HEAPF32: Float32Array;
};

/** It takes 10 ms of 48 kHz at a time. */
export const NOISE_FRAME = 480;
/** And samples as wide as 16 bits. */
const FULL = 32_768;
const BYTES = 4;

/** Takes noise out of sound: RNNoise, which knows speech from the rest. */
export class Denoiser {
  readonly #module: NoiseModule;
  readonly #state: number;
  readonly #at: number;

  constructor(module: NoiseModule) {
    this.#module = module;
    this.#state = module._rnnoise_create(0);
    this.#at = module._malloc(NOISE_FRAME * BYTES);
  }

  /** One frame of samples between -1 and 1, as they are without the noise; and how likely there is speech in it, from 0 to 1. */
  take(frame: Float32Array): { readonly sound: Float32Array; readonly speech: number } {
    // Looked up each time: where the library's memory grows, it is another one.
    const heap = () => this.#module.HEAPF32.subarray(this.#at / BYTES, this.#at / BYTES + NOISE_FRAME);
    heap().set(frame.map((sample) => sample * FULL));
    const speech = this.#module._rnnoise_process_frame(this.#state, this.#at, this.#at);
    return { sound: heap().map((sample) => sample / FULL), speech };
  }
}
