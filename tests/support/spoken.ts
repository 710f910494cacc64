import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { wav } from "../../server/voice/wav.ts";

/** Where what tests say lies, as sound: synthetic speech. */
export const AUDIO = fileURLToPath(new URL("./audio", import.meta.url));
/** What is said there, by its name. */
export const SPOKEN = { word: "albatross", next: "albatross next", stop: "stop", chatter: "nobody told the cook" } as const;
export const spokenFile = (name: string): string => join(AUDIO, `${name}.wav`);

const RATE = 16_000;
/** The files have this much before their samples: RIFF with one chunk of format and one of data. */
const HEAD_BYTES = 44;
const samplesOf = (name: string): Int16Array => {
  const bytes = readFileSync(spokenFile(name)).subarray(HEAD_BYTES);
  return new Int16Array(bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + (bytes.length & ~1)));
};
/** A quiet place: no microphone gives nothing at all. */
const quiet = (seconds: number): Int16Array => Int16Array.from({ length: seconds * RATE }, (_, i) => 3 * Math.sin(i * i));

/** Writes a file for a browser's microphone: each after the other, with so many seconds of quiet before each and at the end. */
export function writeSpeech(file: string, said: readonly (keyof typeof SPOKEN)[], gapSeconds = 1.5): void {
  const parts = [...said.flatMap((name) => [quiet(gapSeconds), samplesOf(name)]), quiet(gapSeconds)];
  const samples = Buffer.concat(parts.map(({ buffer, byteOffset, byteLength }) => Buffer.from(buffer, byteOffset, byteLength)));
  writeFileSync(file, wav(samples, RATE, 16));
}
