import { execFileSync } from "node:child_process";
import { existsSync, mkdirSync, readFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

/** Samples a second, one channel, 16 bit: what the engine is given. */
const RATE = 16_000;
const FOLDER = join(tmpdir(), "ridgecall-clips");

/** A made-up speaker: whose voice, and how fast against its own pace. */
export type Speaker = { readonly voice: string; readonly speed: number };
const SPEEDS = [0.85, 1, 1.2];
/** Those that thresholds may be looked at on. */
export const SPEAKERS: readonly Speaker[] = ["slt", "rms", "awb", "kal16"].flatMap((voice) => SPEEDS.map((speed) => ({ voice, speed })));
/** Of another program, for what is reported and never tuned on. */
export const UNSEEN: readonly Speaker[] = ["en-us", "en-gb+m3", "en-us+f3"].map((voice) => ({ voice: `espeak:${voice}`, speed: 1 }));

/** A text said by a made-up speaker, with four tenths of a second of quiet around it; made once and kept. */
export function clip(text: string, { voice, speed }: Speaker): Int16Array {
  mkdirSync(FOLDER, { recursive: true });
  const name = `${voice}_${speed}_${text}`.replaceAll(/[^\w.+-]+/g, "-");
  const raw = join(FOLDER, `${name}.raw`);
  if (!existsSync(raw)) {
    const wav = join(FOLDER, "said.wav");
    const [, espeak] = /^espeak:(.+)$/.exec(voice) ?? [];
    if (espeak) execFileSync("espeak-ng", ["-v", espeak, "-s", String(Math.round(165 / speed)), "-w", wav, text]);
    else execFileSync("flite", ["-voice", voice, "--setf", `duration_stretch=${speed}`, "-t", text, "-o", wav]);
    execFileSync("sox", [wav, "-r", String(RATE), "-c", "1", "-b", "16", "-e", "signed", raw, "norm", "-9", "pad", "0.4", "0.4"], {
      stdio: "ignore",
    });
  }
  return samples(raw);
}

/** Kinds of noise: brown is wind, pink is a field of people and engines, a generator hums. */
export const NOISES = ["brown", "pink", "generator"] as const;
export type Noise = (typeof NOISES)[number];

const SECONDS = 30;
const made = new Map<Noise, Int16Array>();
function noise(kind: Noise): Int16Array {
  const known = made.get(kind);
  if (known) return known;
  mkdirSync(FOLDER, { recursive: true });
  const raw = join(FOLDER, `noise-${kind}.raw`);
  const synth = kind === "generator" ? [] : ["synth", String(SECONDS), `${kind}noise`];
  if (kind !== "generator" && !existsSync(raw))
    execFileSync("sox", ["-R", "-n", "-r", String(RATE), "-c", "1", "-b", "16", "-e", "signed", raw, ...synth, "norm", "-6"]);
  const all = kind === "generator" ? hum() : samples(raw);
  made.set(kind, all);
  return all;
}

/** A generator of 60 Hz with 32 harmonics, and half as much pink noise under it. */
function hum(): Int16Array {
  const pink = noise("pink");
  return Int16Array.from(pink, (under, i) => {
    let sum = 0;
    for (let k = 1; k <= 32; k++) sum += Math.sin((2 * Math.PI * 60 * k * i) / RATE + k * k) / k;
    return 4000 * sum + under / 2;
  });
}

/** Speech with noise so many dB under it, over the whole band. `at` is where in the noise it begins. */
export function inNoise(speech: Int16Array, kind: Noise, snrDb: number, at: number): Int16Array {
  const under = noise(kind);
  const gain = rms(loud(speech)) / rms(under) / 10 ** (snrDb / 20);
  return Int16Array.from(speech, (sample, i) => Math.max(-32_768, Math.min(32_767, sample + gain * under[(at + i) % under.length]!)));
}

const samples = (raw: string): Int16Array => {
  const bytes = readFileSync(raw);
  return new Int16Array(bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + (bytes.length & ~1)));
};
const loud = (speech: Int16Array): Int16Array => speech.filter((sample) => Math.abs(sample) > 300);
const rms = (sound: Int16Array): number => Math.sqrt(sound.reduce((sum, sample) => sum + sample * sample, 0) / Math.max(1, sound.length));

/** How many seconds of sound. */
export const secondsOf = (sound: Int16Array): number => sound.length / RATE;
