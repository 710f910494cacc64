import { execFileSync } from "node:child_process";
import { existsSync, mkdirSync, readFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { MICROPHONE_RATE } from "../../../views/voice/own/decimator.ts";

const FOLDER = join(tmpdir(), `ridgecall-clips-${MICROPHONE_RATE}`);
/** As a microphone gives it: one channel, 16 bit. */
const FORMAT = ["-r", String(MICROPHONE_RATE), "-c", "1", "-b", "16", "-e", "signed"];

/** A made-up speaker: whose voice, and how fast against its own pace. */
export type Speaker = { readonly voice: string; readonly speed: number };
const SPEEDS = [0.85, 1, 1.2];
/** Those that thresholds may be looked at on. */
export const SPEAKERS: readonly Speaker[] = ["slt", "rms", "awb", "kal16"].flatMap((voice) => SPEEDS.map((speed) => ({ voice, speed })));
/** Of another program, for what is reported and never tuned on. */
export const UNSEEN: readonly Speaker[] = ["en-us", "en-gb+m3", "en-us+f3"].map((voice) => ({ voice: `espeak:${voice}`, speed: 1 }));
/** Likewise, for Spanish words. */
export const SPANISH_SPEAKERS: readonly Speaker[] = ["es-419", "es", "es-419+f3"].map((voice) => ({ voice: `espeak:${voice}`, speed: 1 }));

/** A text said by a made-up speaker, samples between -1 and 1; made once and kept. */
export function clip(text: string, { voice, speed }: Speaker): Float32Array {
  mkdirSync(FOLDER, { recursive: true });
  const name = `${voice}_${speed}_${text}`.replaceAll(/[^\w.+-]+/g, "-").slice(0, 200);
  const raw = join(FOLDER, `${name}.raw`);
  if (!existsSync(raw)) {
    const wav = join(FOLDER, "said.wav");
    const [, espeak] = /^espeak:(.+)$/.exec(voice) ?? [];
    if (espeak) execFileSync("espeak-ng", ["-v", espeak, "-s", String(Math.round(165 / speed)), "-w", wav, text]);
    else execFileSync("flite", ["-voice", voice, "--setf", `duration_stretch=${speed}`, "-t", text, "-o", wav]);
    execFileSync("sox", [wav, ...FORMAT, raw, "norm", "-9"], { stdio: "ignore" });
  }
  return samples(raw);
}

/** Kinds of noise: brown is wind, pink is a field of people and engines, a generator hums. */
export const NOISES = ["brown", "pink", "generator"] as const;
export type Noise = (typeof NOISES)[number];

const SECONDS = 30;
const made = new Map<Noise, Float32Array>();
function noise(kind: Noise): Float32Array {
  const known = made.get(kind);
  if (known) return known;
  mkdirSync(FOLDER, { recursive: true });
  const raw = join(FOLDER, `noise-${kind}.raw`);
  if (kind !== "generator" && !existsSync(raw))
    execFileSync("sox", ["-R", "-n", ...FORMAT, raw, "synth", String(SECONDS), `${kind}noise`, "norm", "-6"]);
  const all = kind === "generator" ? hum() : samples(raw);
  made.set(kind, all);
  return all;
}

/** A generator of 60 Hz with 32 harmonics, and half as much pink noise under it. */
function hum(): Float32Array {
  return noise("pink").map((under, i) => {
    let sum = 0;
    for (let k = 1; k <= 32; k++) sum += Math.sin((2 * Math.PI * 60 * k * i) / MICROPHONE_RATE + k * k) / k;
    return 0.12 * sum + under / 2;
  });
}

/** What lies under everything: a microphone is never quite still. */
const STILL = 1e-4;
/** Before speech the place is heard for so long, and after it. In seconds. */
const [LEAD, TAIL] = [1.5, 0.6];
const many = (seconds: number): number => Math.round(seconds * MICROPHONE_RATE);

/** Speech with the place around it: still, or with noise so many dB under the speech, over the whole band. `at` is where in the noise it begins. */
export function inPlace(speech: Float32Array, place: { kind: Noise; snrDb: number } | null, at = 0): Float32Array {
  const all = Float32Array.from({ length: many(LEAD + TAIL) + speech.length }, (_, i) => STILL * Math.sin(i * i * 0.7));
  for (let i = 0; i < speech.length; i++) all[many(LEAD) + i]! += speech[i]!;
  if (!place) return all;
  const under = noise(place.kind);
  const gain = rms(loud(speech)) / rms(under) / 10 ** (place.snrDb / 20);
  return all.map((sample, i) => Math.max(-1, Math.min(1, sample + gain * under[(at + i) % under.length]!)));
}

/** One sound over another, the other so many dB louder; as long as the longer one. */
export function over(one: Float32Array, other: Float32Array, at: number, louderDb: number): Float32Array {
  const gain = (rms(loud(one)) / rms(loud(other))) * 10 ** (louderDb / 20);
  const all = Float32Array.from({ length: Math.max(one.length + at, other.length) }, (_, i) => gain * (other[i] ?? 0));
  for (let i = 0; i < one.length; i++) all[at + i]! += one[i]!;
  return all;
}

function samples(raw: string): Float32Array {
  const bytes = readFileSync(raw);
  const ints = new Int16Array(bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + (bytes.length & ~1)));
  return Float32Array.from(ints, (sample) => sample / 32_768);
}
const loud = (speech: Float32Array): Float32Array => speech.filter((sample) => Math.abs(sample) > 0.01);
const rms = (sound: Float32Array): number => Math.sqrt(sound.reduce((sum, sample) => sum + sample * sample, 0) / Math.max(1, sound.length));

/** How many seconds of sound. */
export const secondsOf = (sound: Float32Array): number => sound.length / MICROPHONE_RATE;
