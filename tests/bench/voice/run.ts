import { english } from "../../../machines/speech/en/english.ts";
import { isPartOf } from "../../../machines/speech/en/holds.ts";
import { sayableAt } from "../../../machines/speech/en/sayable.ts";
import type { Listening } from "../../../machines/speech/listening.ts";
import { NUMBER, type Sayable } from "../../../machines/speech/sayable.ts";
import { demoBrief } from "../../../server/demo.ts";
import { readBrief } from "../../../server/input/brief.ts";
import { earGrammar, heardAlways } from "../../../server/routes/sayable.ts";
import { MICROPHONE_RATE } from "../../../views/voice/own/decimator.ts";
import type { EarGrammar } from "../../../views/voice/own/grammar.ts";
import { type HeardWords, Hearing } from "../../../views/voice/own/hearing.ts";
import { QUIET_MS } from "../../../views/voice/own/voice-activity.ts";
import { clip, inPlace, NOISES, type Noise, over, SPANISH_SPEAKERS, SPEAKERS, type Speaker, secondsOf, UNSEEN } from "./clips.ts";
import { engineInNode } from "./engine.ts";
import { guideTexts, NEAR_RHYMES, sentences } from "./not-meant.ts";

/**
 * `npm run bench:voice [HOW_MUCH]`: this phone's own ear on made-up speech, from the sound of the microphone to words. Of all there is to say,
 * 1 in HOW_MUCH is tried.
 */
const STRIDE = Math.max(1, Number(process.argv[2] ?? 12));
/** Calls with each way to answer, and one at which nothing is asked. */
const CALLS = ["straps.choked", "sides.laid", "drive.AB", "wind.cloth", "marked", "lace.S1.AB"];
const WAKE_WORD = "albatross";
/** Made-up English voices do not say these as people do. */
const SPANISH = /^(?:cuidado|alto|para|párale|paren)/;
const SNR_DB = [20, 10, 5, 0];
/** What stands for a number in what is said, one after the other. */
const SAID_NUMBERS = ["thirty six", "four and a half", "nineteen", "a hundred and twelve", "six"];

const { is, engine, denoiser } = await engineInNode();
const { script } = readBrief(demoBrief("2026-06-01", "2026-06-20")).frozen;
let heard: HeardWords[] = [];
/** Sound that came so far, in ms. */
let came = 0;
/** Where in the sound the last words were told: their voice had ended `QUIET_MS` before. */
let toldAt = 0;
const hearing = new Hearing(engine, denoiser, {
  began: () => {},
  heard: (words) => {
    heard.push(words);
    toldAt = came;
  },
  nothing: () => {},
  level: () => {},
});

let [hearMs, sounded] = [0, 0];
/** How long each utterance took from the end of its voice to its words, had its sound come as a microphone gives it. */
const lagsMs: number[] = [];
const PIECE_MS = 20;
const PIECE = (MICROPHONE_RATE * PIECE_MS) / 1000;
/** What is heard in a sound, at a call. */
function hear(grammar: EarGrammar, sound: Float32Array, how = { talk: false, speaking: false }): readonly string[] {
  heard = [];
  hearing.begin();
  hearing.expect(grammar);
  Object.assign(hearing, how);
  const began = performance.now();
  let [ready, lagMs] = [0, 0];
  came = 0;
  for (let at = 0; at < sound.length; at += PIECE) {
    const known = heard.length;
    came += PIECE_MS;
    const before = performance.now();
    hearing.take(sound.subarray(at, at + PIECE));
    // What is worked on longer than a piece lasts is caught up with in the next ones.
    ready = Math.max(came, ready) + performance.now() - before;
    if (heard.length > known) lagMs = ready - (toldAt - QUIET_MS);
  }
  hearing.cut();
  if (!how.speaking && lagMs > 0) lagsMs.push(lagMs);
  hearMs += performance.now() - began;
  sounded += secondsOf(sound);
  return heard.map(({ words }) => words);
}

type Kind = "after the wake word" | "with the button" | "holds" | "Spanish holds";
type Place = { readonly listening: Listening; readonly grammar: EarGrammar };
type Line = { readonly place: Place; readonly said: string; readonly kind: Kind };
let numbers = 0;
const withNumbers = (phrase: string): string => phrase.replaceAll(NUMBER, () => SAID_NUMBERS[numbers++ % SAID_NUMBERS.length]!);
const oneIn = <T>(all: readonly T[], n = STRIDE): T[] => all.filter((_, i) => i % n === 0);
const places = CALLS.map((id): Place & { readonly sayable: Sayable } => {
  const listening = { step: script.steps.find((step) => step.id === id)!, asks: null };
  const sayable = sayableAt(listening);
  return { listening, sayable, grammar: earGrammar(heardAlways(sayable, english, WAKE_WORD), sayable.answers, WAKE_WORD) };
});
const lines: Line[] = places.flatMap(({ sayable: { answers, orders, questions, holds }, ...place }) => {
  const bound = oneIn([...answers.slice(0, 24), ...orders.slice(0, 12), ...questions.slice(0, 18)]).map(withNumbers);
  return [
    ...bound.map((said): Line => ({ place, said: `${WAKE_WORD} ${said}`, kind: "after the wake word" })),
    ...bound.map((said): Line => ({ place, said, kind: "with the button" })),
    ...oneIn(holds.filter((hold) => !SPANISH.test(hold))).map((said): Line => ({ place, said, kind: "holds" })),
    // There are few.
    ...holds.filter((hold) => SPANISH.test(hold)).map((said): Line => ({ place, said, kind: "Spanish holds" })),
  ];
});

type Went = "right" | "wrong" | "a hold instead" | "not heard";
/** What counts is what words mean at the call; one hold is as good as another. */
function meaning(words: string, { listening }: Place): string {
  if (english.isHold(words)) return "hold";
  const [first, ...rest] = words.split(" ");
  return JSON.stringify(english.understand(first === WAKE_WORD ? rest.join(" ") : words, listening));
}
function went({ said, place }: Line, words: readonly string[]): Went {
  if (words.length === 0) return "not heard";
  const others = words.filter((text) => meaning(text, place) !== meaning(said, place));
  if (others.length === 0) return "right";
  return others.every(english.isHold) ? "a hold instead" : "wrong";
}

const percent = (n: number, of: number): string => `${((100 * n) / Math.max(1, of)).toFixed(1)} %`;
const wrongs = new Map<string, number>();
function report(name: string, kind: Kind, speakers: readonly Speaker[], place: { kind: Noise; snrDb: number } | null) {
  const of = lines.filter((line) => line.kind === kind);
  const all = of.map((line, i) => {
    const sound = inPlace(clip(line.said, speakers[i % speakers.length]!), place, i * 7919);
    const words = hear(line.place.grammar, sound, { talk: kind === "with the button", speaking: false });
    const is = went(line, words);
    if (is === "wrong" || is === "a hold instead")
      wrongs.set(`${line.said} > ${words.join(", ")}`, (wrongs.get(`${line.said} > ${words.join(", ")}`) ?? 0) + 1);
    return is;
  });
  const count = (is: Went) => percent(all.filter((h) => h === is).length, all.length);
  const parts = (["right", "wrong", "a hold instead", "not heard"] as const).map((is) => `${count(is)} ${is}`);
  console.log(`${name}, ${kind}: ${parts.join(", ")}, of ${all.length}`);
}

console.log(`Engine ${is}, ${CALLS.length} calls; synthetic speech only.`);
for (const kind of ["after the wake word", "with the button", "holds"] as const) {
  report("clean", kind, SPEAKERS, null);
  report("clean, voices not tuned on", kind, UNSEEN, null);
  for (const noise of NOISES) for (const snrDb of SNR_DB) report(`${noise} ${snrDb} dB`, kind, SPEAKERS, { kind: noise, snrDb });
}
report("clean", "Spanish holds", SPANISH_SPEAKERS, null);
report("brown 10 dB", "Spanish holds", SPANISH_SPEAKERS, { kind: "brown", snrDb: 10 });
const often = [...wrongs].sort((a, b) => b[1] - a[1]).slice(0, 12);
if (often.length > 0) console.log(`Heard wrong most:\n${often.map(([what, n]) => `  ${n} × ${what}`).join("\n")}`);

/** What is taken though nothing was meant: as a hold, or as something that binds. */
for (const [name, texts] of [
  ["sentences", sentences()],
  ["near-rhymes", NEAR_RHYMES],
] as const)
  for (const talk of [false, true]) {
    const taken = texts.flatMap((said, i) =>
      hear(places[i % places.length]!.grammar, inPlace(clip(said, SPEAKERS[i % SPEAKERS.length]!), null), { talk, speaking: false }),
    );
    const holds = taken.filter(english.isHold);
    const bound = taken.filter((words) => words.startsWith(WAKE_WORD) || (talk && !english.isHold(words)));
    const button = talk ? " with the button" : "";
    console.log(
      `${name}${button}: ${bound.length} taken as binding, ${holds.length} as a hold, ${taken.length} in all, of ${texts.length}`,
    );
    if (taken.length > 0) console.log(`  ${taken.slice(0, 12).join(", ")}`);
  }

/** The guide's own voice as loud as who calls into it, twice as loud, and taken out as a browser should; a part of its own text is no hold. */
const speaking = { talk: false, speaking: true };
const own = { voice: "rms", speed: 1 };
const CRIES = [
  "stop",
  "hold",
  "everybody stop",
  "stop stop",
  "freeze",
  "hold it",
  "stop the lift",
  "don't move",
  "whoa whoa whoa",
  "hold the lift",
  "shut it down",
];
const heardInto = (text: string, sound: Float32Array) =>
  hear(places[0]!.grammar, inPlace(sound, null), speaking).filter((hold) => !isPartOf(hold, text));
const texts = guideTexts();
for (const [how, louderDb] of [
  ["as loud as they", 0],
  ["twice as loud", 6],
  ["taken out", null],
] as const) {
  const stopped = CRIES.filter((said, i) => {
    const cry = clip(said, SPEAKERS[i % SPEAKERS.length]!);
    const text = texts[i % texts.length]!;
    return heardInto(text, louderDb === null ? cry : over(cry, clip(text, own), MICROPHONE_RATE / 2, louderDb)).length > 0;
  });
  console.log(`Holds while the guide speaks, its voice ${how}: ${stopped.length} heard of ${CRIES.length}`);
}
for (const [name, said, voice] of [
  ["its own voice, not taken out", texts, () => own],
  ["talk of the site, its voice taken out", sentences(), (i: number) => SPEAKERS[i % SPEAKERS.length]!],
] as const) {
  const before = sounded;
  const taken = oneIn(said, Math.max(1, Math.round(STRIDE / 6))).flatMap((text, i) => heardInto(text, clip(text, voice(i))));
  console.log(
    `False holds while it speaks, ${name}: ${taken.length} in ${((sounded - before) / 60).toFixed(1)} minutes. ${taken.slice(0, 8).join(", ")}`,
  );
}
const median = lagsMs.sort((a, b) => a - b)[Math.floor(lagsMs.length / 2)] ?? 0;
console.log(
  `From the end of the voice to its words: ${median.toFixed(0)} ms in the middle, of which ${QUIET_MS} ms make sure that it has ended.`,
);
console.log(`Hearing takes ${(hearMs / 1000 / sounded).toFixed(2)} of the time that the sound takes.`);
