/** From what a microphone is taken at, and a noise is taken out at, to what the engine wants. */
export const [MICROPHONE_RATE, ENGINE_RATE] = [48_000, 16_000];
const BY = MICROPHONE_RATE / ENGINE_RATE;
/** A Kaiser window of this shape keeps what lies over the new band 60 dB down (Kaiser 1974: 0.1102 (A - 8.7)). */
const BETA = 0.1102 * (60 - 8.7);
/** Taps on either side. With it the filter falls from 7 kHz to 8 kHz; speech has little up there. */
const HALF = 87;
const CUTOFF_HZ = 7500;

/**
 * Takes 48 kHz down to 16 kHz: a low-pass of linear phase, of which every third sample is worked out. Remembers what came before, so
 * that sound may come in pieces of any length.
 */
export class Decimator {
  #before = new Float32Array(2 * HALF);
  /** How many samples of the next piece come before the next one that is kept. */
  #skip = 0;

  /** Samples between -1 and 1, to the same at a third of the rate. */
  take(sound: Float32Array): Float32Array {
    const all = new Float32Array(this.#before.length + sound.length);
    all.set(this.#before);
    all.set(sound, this.#before.length);
    const kept = Math.max(0, Math.ceil((sound.length - this.#skip) / BY));
    const out = new Float32Array(kept);
    for (let i = 0; i < kept; i++) {
      const at = this.#skip + i * BY;
      let sum = 0;
      for (let k = 0; k < TAPS.length; k++) sum += TAPS[k]! * all[at + k]!;
      out[i] = sum;
    }
    this.#skip += kept * BY - sound.length;
    this.#before = all.slice(all.length - 2 * HALF);
    return out;
  }
}

/** The zeroth-order modified Bessel function of the first kind, by its series. */
function bessel0(x: number): number {
  let [sum, term] = [1, 1];
  for (let k = 1; term > sum * 1e-12; k++) {
    term *= (x / (2 * k)) ** 2;
    sum += term;
  }
  return sum;
}

/** A sinc under a Kaiser window, whose taps come to 1. */
const TAPS = ((): Float32Array => {
  const taps = Float32Array.from({ length: 2 * HALF + 1 }, (_, i) => {
    const t = i - HALF;
    const sinc =
      t === 0 ? 1 : Math.sin((2 * Math.PI * CUTOFF_HZ * t) / MICROPHONE_RATE) / ((2 * Math.PI * CUTOFF_HZ * t) / MICROPHONE_RATE);
    return (sinc * bessel0(BETA * Math.sqrt(1 - (t / HALF) ** 2))) / bessel0(BETA);
  });
  const sum = taps.reduce((a, b) => a + b, 0);
  return taps.map((tap) => tap / sum);
})();

/** To the 16 bits that the engine takes. */
export const toInt16 = (sound: Float32Array): Int16Array =>
  Int16Array.from(sound, (sample) => Math.max(-32_768, Math.min(32_767, Math.round(sample * 32_768))));
