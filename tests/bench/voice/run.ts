import { english } from "../../../machines/speech/en/english.ts";
import { numberGraph } from "../../../machines/speech/en/number-graph.ts";
import { sayableAt } from "../../../machines/speech/en/sayable.ts";
import { NUMBER, type Sayable } from "../../../machines/speech/sayable.ts";
import { wordGraph, wordsIn } from "../../../machines/speech/word-graph.ts";
import { demoBrief } from "../../../server/demo.ts";
import { readBrief } from "../../../server/input/brief.ts";
import { pronunciationsOf } from "../../../server/voice/pronunciations.ts";
import { Decoder, MIN_FIT, type Told } from "../../../views/voice/own/decoder.ts";
import { clip, inNoise, NOISES, type Noise, SPEAKERS, type Speaker, secondsOf, UNSEEN } from "./clips.ts";
import { loadEngine } from "./engine.ts";
import { NEAR_RHYMES, sentences } from "./not-meant.ts";

/** `npm run bench:voice [HOW_MUCH]`: the engine of our own on made-up speech. Of all there is to say, 1 in HOW_MUCH is tried. */
const STRIDE = Math.max(1, Number(process.argv[2] ?? 12));
/** Calls with each way to answer, and one at which nothing is asked. */
const CALLS = ["straps.choked", "sides.laid", "drive.AB", "wind.cloth", "marked", "lace.S1.AB"];
const WAKE_WORD = "albatross";
const SNR_DB = [20, 10];
/** What stands for a number in what is said, one after the other. */
const SAID_NUMBERS = ["thirty six", "four and a half", "nineteen", "a hundred and twelve", "six"];

const { files, module, model } = await loadEngine();
const decoder = new Decoder(module, model);
const { script } = readBrief(demoBrief("2026-06-01", "2026-06-20")).frozen;

type Grammar = { readonly told: Told; readonly sayable: Sayable };
/** What binds wants the wake word before it; holds never do. */
const grammars = CALLS.map((id): Grammar => {
  const sayable = sayableAt({ step: script.steps.find((step) => step.id === id)!, asks: null });
  const bound = [...sayable.answers, ...sayable.orders, ...sayable.questions].map((phrase) => `${WAKE_WORD} ${phrase}`);
  const graph = wordGraph([...new Set([...bound, ...sayable.holds])], numberGraph);
  decoder.learn(pronunciationsOf(wordsIn(graph)));
  return { told: decoder.tell(graph), sayable };
});

let numbers = 0;
const withNumbers = (phrase: string): string => phrase.replaceAll(NUMBER, () => SAID_NUMBERS[numbers++ % SAID_NUMBERS.length]!);
type Line = { readonly grammar: Told; readonly said: string; readonly kind: "bound" | "hold" };
const everyOther = <T>(all: readonly T[], stride = STRIDE): T[] => all.filter((_, i) => i % stride === 0);
const lines: Line[] = grammars.flatMap(({ told, sayable }) => [
  ...everyOther([...sayable.answers.slice(0, 24), ...sayable.orders.slice(0, 12), ...sayable.questions.slice(0, 18)]).map(
    (phrase): Line => ({ grammar: told, said: `${WAKE_WORD} ${withNumbers(phrase)}`, kind: "bound" }),
  ),
  ...everyOther(sayable.holds).map((said): Line => ({ grammar: told, said, kind: "hold" })),
]);

let [decodeMs, sounded] = [0, 0];
type Heard = "right" | "wrong" | "not heard";
function hear({ grammar, said }: Line, sound: Int16Array): Heard {
  const began = performance.now();
  const { words, fit } = decoder.decode(grammar, sound);
  decodeMs += performance.now() - began;
  sounded += secondsOf(sound);
  if (fit < MIN_FIT) return "not heard";
  return isSame(words, said) ? "right" : "wrong";
}

/** One hold is as good as another; of what binds, the words after the wake word count. */
function isSame(words: string, said: string): boolean {
  const [heard, meant] = [words, said].map((text) => (english.isHold(text) ? "hold" : text));
  return heard === meant;
}

const percent = (n: number, of: number): string => `${((100 * n) / Math.max(1, of)).toFixed(1)} %`;
function report(
  name: string,
  kind: Line["kind"],
  speakers: readonly Speaker[],
  noisy: (sound: Int16Array, i: number) => Int16Array = (s) => s,
) {
  const of = lines.filter((line) => line.kind === kind);
  const heard = of.map((line, i) => hear(line, noisy(clip(line.said, speakers[i % speakers.length]!), i)));
  const count = (is: Heard) => percent(heard.filter((h) => h === is).length, heard.length);
  console.log(
    `${name}, ${kind === "hold" ? "holds" : "after the wake word"}: ${count("right")} right, ${count("wrong")} wrong, ${count("not heard")} not heard, of ${heard.length}`,
  );
}

console.log(`Engine ${files.is}, ${CALLS.length} calls, accepted from a fit of ${MIN_FIT}; synthetic speech only.`);
for (const kind of ["bound", "hold"] as const) {
  report("clean", kind, SPEAKERS);
  report("clean, voices not tuned on", kind, UNSEEN);
  for (const noise of NOISES)
    for (const snr of SNR_DB) report(`${noise} ${snr} dB`, kind, SPEAKERS, (sound, i) => inNoise(sound, noise as Noise, snr, i * 7919));
}
/** What is taken though nothing was meant: as a hold, or as something that binds. */
for (const [name, texts] of [
  ["sentences", sentences()],
  ["near-rhymes", NEAR_RHYMES],
] as const) {
  const taken = texts.flatMap((said, i) => {
    const { words, fit } = decoder.decode(grammars[i % grammars.length]!.told, clip(said, SPEAKERS[i % SPEAKERS.length]!));
    return fit >= MIN_FIT ? [words] : [];
  });
  const bound = taken.filter((words) => words.startsWith(WAKE_WORD));
  console.log(`${name}: ${bound.length} taken as binding, ${taken.length - bound.length} as a hold, of ${texts.length}`);
  if (taken.length > 0) console.log(`  ${taken.slice(0, 12).join(", ")}`);
}
console.log(`Decoding takes ${(decodeMs / 1000 / sounded).toFixed(2)} of the time that the sound takes.`);
