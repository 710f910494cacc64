import { numberGraph } from "../../../machines/speech/en/number-graph.ts";
import { type WordGraph, wordGraph } from "../../../machines/speech/word-graph.ts";
import { Decimator, ENGINE_RATE, MICROPHONE_RATE, toInt16 } from "./decimator.ts";
import type { Decoded, Decoder, Pronunciations, Told } from "./decoder.ts";
import { type Denoiser, NOISE_FRAME } from "./denoiser.ts";
import type { Fits } from "./fits.ts";
import type { EarGrammar } from "./grammar.ts";
import { Hiss } from "./hiss.ts";
import { type Activity, FRAME_MS, Loudness, VoiceActivity } from "./voice-activity.ts";

/** Below so much speech over noise only a hold counts: wrong words get more the louder it is. Looked for on synthetic speech. */
export const MIN_MARGIN_DB = 6;
/** Speech began so much before it was noticed. */
const BEFORE_MS = 250 + 4 * FRAME_MS;
/** Through the guide's own voice a hold is looked for in the last so many ms, so often. */
const WINDOW_MS = 2000;
const LOOK_MS = 600;
const inSamples = (ms: number): number => (ms * ENGINE_RATE) / 1000;
const FRAME = (MICROPHONE_RATE * FRAME_MS) / 1000;

/** Why nothing came of speech: it fits nothing that can be said, it is too loud here, it went on for too long. */
export type Unheard = "unfit" | "tooLoud" | "tooLong";
/** What was said, and how much over the noise. */
export type HeardWords = Omit<Decoded, "of"> & { readonly marginDb: number };
/** What hearing tells, in the order in which it happens. */
export type HearingTold = {
  readonly began: () => void;
  readonly heard: (heard: HeardWords) => void;
  readonly nothing: (why: Unheard) => void;
  /** Several times a second: how loud it is, and how loud the noise of the place, in dB. */
  readonly level: (levelDb: number, floorDb: number) => void;
};
/** What can be said at a call, as the decoder was told it. */
type Known = {
  readonly open: readonly Told[];
  readonly talk: readonly Told[];
  readonly holds: Told;
  readonly spot: Told;
  readonly releases: ReadonlySet<string>;
};

/** What the speech so far is in some grammars. */
type Early = { readonly grammars: readonly Told[]; readonly all: readonly Decoded[] };

/** A level is told once in so many frames. */
const LEVEL_FRAMES = 10;

/**
 * From the sound of a microphone, at 48 kHz, to words: noise is taken out, speech told from quiet, and each stretch of speech decoded. Knows
 * nothing of where the sound comes from, nor of a browser.
 */
export class Hearing {
  readonly #decoder: Decoder;
  readonly #fits: Fits;
  readonly #denoiser: Denoiser;
  readonly #told: HearingTold;
  readonly #decimator = new Decimator();
  readonly #hiss = new Hiss();
  #loudness = new Loudness();
  /** Phrases that the decoder was told before, by what they are: it never forgets any. */
  readonly #known = new Map<string, Told>();
  #activity = new VoiceActivity();
  #grammar: Known | null = null;
  #waiting = new Float32Array(0);
  /** What came before and belongs to speech: at 16 kHz. */
  #kept: Int16Array[] = [];
  #speech = false;
  #talked = false;
  /** Made of what was said up to a pause, while it is awaited whether that is its end: words come so much sooner. */
  #early: Early | null = null;
  #sinceLook = 0;
  #frames = 0;
  /** The talk button is held. */
  talk = false;
  /** The guide speaks: whatever else is heard is its own voice. */
  speaking = false;

  constructor({ decoder, fits }: { readonly decoder: Decoder; readonly fits: Fits }, denoiser: Denoiser, told: HearingTold) {
    this.#decoder = decoder;
    this.#fits = fits;
    this.#denoiser = denoiser;
    this.#told = told;
  }

  /** What can be said from now on. */
  expect({ always, answers, holds, releases, ways }: EarGrammar): void {
    this.#decoder.learn(ways);
    const tell = (phrases: readonly string[]) => this.#tell(phrases, (graph) => this.#decoder.tell(graph));
    const of = (how: "open" | "talk") => [holds, always[how], answers[how]].filter((phrases) => phrases.length > 0).map(tell);
    const spot = this.#tell(longEnough(holds, ways), (graph) => this.#decoder.tellSpotting(graph), "spot ");
    this.#grammar = { open: of("open"), talk: of("talk"), holds: tell(holds), spot, releases: new Set(releases) };
  }
  #tell(phrases: readonly string[], tell: (graph: WordGraph) => Told, how = ""): Told {
    const key = how + phrases.join("\n");
    const told = this.#known.get(key) ?? tell(wordGraph(phrases, numberGraph));
    this.#known.set(key, told);
    return told;
  }

  /** Sound as it comes, in pieces of any length, between -1 and 1. */
  take(sound: Float32Array): void {
    const all = new Float32Array(this.#waiting.length + sound.length);
    all.set(this.#waiting);
    all.set(sound, this.#waiting.length);
    let at = 0;
    for (; at + FRAME <= all.length; at += FRAME) this.#frame(all.subarray(at, at + FRAME));
    this.#waiting = all.slice(at);
  }

  /** What is being said is at its end: the button was let go. */
  cut(): void {
    if (this.#activity.cut()) this.#ended("ended");
    this.#speech = false;
  }

  /** The microphone is new: what it was like before counts no more. */
  begin(): void {
    this.#activity = new VoiceActivity();
    this.#loudness = new Loudness();
    this.#waiting = new Float32Array(0);
    this.#kept = [];
    this.#early = null;
    this.#speech = false;
  }

  #frame(frame: Float32Array): void {
    const level = this.#loudness.take(frame);
    const clean = new Float32Array(FRAME);
    let likely = 0;
    for (let at = 0; at < FRAME; at += NOISE_FRAME) {
      const { sound, speech } = this.#denoiser.take(frame.subarray(at, at + NOISE_FRAME));
      clean.set(sound, at);
      likely = Math.max(likely, speech);
    }
    this.#kept.push(toInt16(this.#hiss.under(this.#decimator.take(clean))));
    if (this.#frames++ % LEVEL_FRAMES === 0) this.#told.level(level, this.#activity.floorDb);
    const activity = this.#activity.take(level, likely);
    if (activity === "began") {
      this.#speech = true;
      this.#talked = this.talk;
      this.#told.began();
    }
    this.#talked ||= this.talk;
    if (activity === "goesOn" && !this.#activity.isPausing) this.#early = null;
    if (activity === "pauses" && !this.speaking) this.#early = this.#decoded();
    if (activity === "ended" || activity === "tooLong") {
      this.#speech = false;
      this.#ended(activity);
    }
    if (this.speaking) this.#look();
    else if (!this.#speech) this.#forget(BEFORE_MS);
  }

  /** A stretch of speech is over. */
  #ended(activity: Activity): void {
    const heard = activity === "tooLong" ? "tooLong" : this.speaking ? this.#holdIn(joined(this.#kept)) : this.#words();
    this.#kept = [];
    this.#early = null;
    if (typeof heard !== "string") this.#told.heard(heard);
    else if (!this.speaking) this.#told.nothing(heard);
  }
  /** While the guide speaks: a hold and nothing else, where the browser has taken the guide's own voice out of what is heard. */
  #holdIn(sound: Int16Array): HeardWords | Unheard {
    const [hold] = this.#grammar ? this.#decoder.decode([this.#grammar.holds], sound) : [];
    return hold && hold.fit >= this.#fits.words ? { ...hold, marginDb: this.#activity.marginDb } : "unfit";
  }
  #decoded(): Early {
    const grammars = (this.#talked ? this.#grammar?.talk : this.#grammar?.open) ?? NOTHING;
    // What can be said, or whether the button is held, may have changed since the pause.
    return this.#early?.grammars === grammars ? this.#early : { grammars, all: this.#decoder.decode(grammars, joined(this.#kept)) };
  }
  #words(): HeardWords | Unheard {
    const grammar = this.#grammar;
    const { all } = this.#decoded();
    const [best] = all;
    if (!best || grammar === null) return "unfit";
    const { marginDb } = this.#activity;
    const hold = all.find(({ of }) => of === grammar.holds);
    // A hold that is nearly as likely is one: a false one costs a moment, one that is taken for something else more.
    const near = grammar.releases.has(best.words) ? this.#fits.nearRelease : this.#fits.near;
    if (hold && hold.fit >= this.#fits.hold && best.fit - hold.fit <= near) return { ...hold, marginDb };
    if (best.of === grammar.holds || best.fit < this.#fits.words) return "unfit";
    return marginDb < MIN_MARGIN_DB ? "tooLoud" : { ...best, marginDb };
  }

  /** Whether somebody calls a hold into the guide's own voice. */
  #look(): void {
    this.#forget(WINDOW_MS);
    this.#sinceLook += FRAME_MS;
    if (this.#sinceLook < LOOK_MS || this.#grammar === null) return;
    this.#sinceLook = 0;
    const [heard] = this.#decoder.decode([this.#grammar.spot], joined(this.#kept));
    if (!heard || heard.fit < this.#fits.spotted) return;
    this.#kept = [];
    this.#told.began();
    this.#told.heard({ ...heard, marginDb: this.#activity.marginDb });
  }

  #forget(ms: number): void {
    let many = this.#kept.reduce((sum, { length }) => sum + length, 0);
    while (many > inSamples(ms)) many -= this.#kept.shift()!.length;
  }
}

const NOTHING: readonly Told[] = [];

/** Holds of so many sounds at least, a shorter one said twice: a short one is found in any speech. */
const MIN_SOUNDS = 7;
function longEnough(holds: readonly string[], ways: Pronunciations): readonly string[] {
  const sounds = (phrase: string) => phrase.split(" ").flatMap((word) => ways[word]?.[0]?.split(" ") ?? []).length;
  return [...new Set(holds.flatMap((hold) => [hold, `${hold} ${hold}`]).filter((hold) => sounds(hold) >= MIN_SOUNDS))];
}

function joined(pieces: readonly Int16Array[]): Int16Array {
  const all = new Int16Array(pieces.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const piece of pieces) {
    all.set(piece, at);
    at += piece.length;
  }
  return all;
}
