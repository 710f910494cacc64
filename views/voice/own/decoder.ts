import { type Arc, type WordGraph, wordsIn } from "../../../machines/speech/word-graph.ts";

/** Of the engine's module, what is used here. Vectors are freed by whoever made them. */
type Vector<T> = { push_back(item: T): void; get(i: number): T; set(i: number, item: T): void; size(): number; delete(): void };
type Segment = { readonly word: string; readonly start: number; readonly end: number; readonly ascr: number };
type Recognizer = {
  addWords(words: Vector<readonly [string, string]>): unknown;
  addGrammar(id: Vector<number>, grammar: object): unknown;
  switchSearch(id: number): unknown;
  start(): unknown;
  stop(): unknown;
  process(sound: Vector<number>): unknown;
  getHypseg(segments: Vector<Segment>): unknown;
};
/** The engine as it has loaded itself. */
export type EngineModule = {
  readonly Config: new () => Vector<readonly [string, string]>;
  readonly Recognizer: new (config: Vector<readonly [string, string]>) => Recognizer;
  readonly VectorWords: new () => Vector<readonly [string, string]>;
  readonly VectorTransitions: new () => Vector<object>;
  readonly Integers: new () => Vector<number>;
  readonly AudioBuffer: new () => Vector<number>;
  readonly Segmentation: new () => Vector<Segment>;
};

/** How words are said: each in one way or several, in the sounds of the model. */
export type Pronunciations = Readonly<Record<string, readonly string[]>>;

/** The sounds of English, as the dictionary of the model writes them. */
const SOUNDS = "AA AE AH AO AW AY B CH D DH EH ER EY F G HH IH IY JH K L M N NG OW OY P R S SH T TH UH UW V W Y Z ZH".split(" ");
const soundWord = (sound: string): string => `_${sound}`;
const anySounds = (at: number): readonly Arc[] => SOUNDS.map((sound) => ({ from: at, to: at, word: soundWord(sound) }));
/** Samples are handed over so many at a time: the engine's own buffer never shrinks. */
const CHUNK = 1600;

/** What was heard, and how much better it fits than any row of sounds does, for each hundredth of a second: below some, it was nothing of it. */
export type Decoded = { readonly of: Told; readonly words: string; readonly fit: number };
/** A grammar that the engine has been told. */
export type Told = { readonly id: number };

/**
 * Turns the sound of one utterance into words of a grammar, and tells how well it fits: the same sound is decoded once more as any row
 * of sounds, and what the grammar's best path lacks against that is its misfit. 16 kHz, 16 bit, one channel.
 */
export class Decoder {
  readonly #module: EngineModule;
  readonly #recognizer: Recognizer;
  readonly #sound: Vector<number>;
  readonly #ways = new Map<string, number>();
  readonly #anySounds: Told;

  /** `model` is where the engine finds its model, `null` for the one inside it. */
  constructor(module: EngineModule, model: string | null) {
    this.#module = module;
    const config = new module.Config();
    if (model !== null) config.push_back(["-hmm", model]);
    for (const [key, is] of [
      ["-compallsen", "yes"],
      ["-fwdflat", "no"],
      ["-bestpath", "no"],
    ] as const)
      config.push_back([key, is]);
    this.#recognizer = new module.Recognizer(config);
    config.delete();
    this.#sound = new module.AudioBuffer();
    for (let i = 0; i < CHUNK; i++) this.#sound.push_back(0);
    this.learn(Object.fromEntries(SOUNDS.map((sound) => [soundWord(sound), [sound]])));
    this.#anySounds = this.tell({ states: 1, start: 0, end: 0, arcs: anySounds(0) });
  }

  /** Words that grammars are made of. Those that it knows already stay as they are. */
  learn(pronunciations: Pronunciations): void {
    const words = new this.#module.VectorWords();
    for (const [word, ways] of Object.entries(pronunciations)) {
      if (this.#ways.has(word)) continue;
      this.#ways.set(word, ways.length);
      for (const [i, sounds] of ways.entries()) words.push_back([inWay(word, i), sounds]);
    }
    if (words.size() > 0) this.#recognizer.addWords(words);
    words.delete();
  }

  /** A grammar of words that it has learned. Throws on one that it has not: the engine would let it pass for silence. */
  tell(graph: WordGraph): Told {
    const unknown = wordsIn(graph).filter((word) => !this.#ways.has(word));
    if (unknown.length > 0) throw new Error(`nobody has told how to say ${unknown.join(", ")}`);
    const transitions = new this.#module.VectorTransitions();
    for (const { from, to, word } of graph.arcs)
      for (let way = 0; way < (this.#ways.get(word) ?? 1); way++) transitions.push_back({ from, to, logp: 0, word: inWay(word, way) });
    const ids = new this.#module.Integers();
    this.#recognizer.addGrammar(ids, { start: graph.start, end: graph.end, numStates: graph.states, transitions });
    const id = ids.get(0);
    transitions.delete();
    ids.delete();
    return { id };
  }

  /** The same as `tell`, for words that may stand anywhere in other sounds: those count neither as words nor in the fit. */
  tellSpotting({ states, start, end, arcs }: WordGraph): Told {
    return this.tell({ states, start, end, arcs: [...anySounds(start), ...arcs, ...anySounds(end)] });
  }

  /** What one utterance is in each grammar, the likeliest first; one of which no path comes to its end is left out. */
  decode(grammars: readonly Told[], sound: Int16Array): readonly Decoded[] {
    const passes = grammars.map((of) => ({ of, ...this.#pass(of, sound) })).filter(({ words }) => words !== "");
    if (passes.length === 0) return [];
    const { score: anySounds } = this.#pass(this.#anySounds, sound);
    return passes
      .sort((a, b) => b.score - a.score)
      .map(({ of, words, score, frames }) => ({ of, words, fit: (score - anySounds) / Math.max(1, frames) }));
  }

  #pass({ id }: Told, sound: Int16Array): { words: string; score: number; frames: number } {
    const recognizer = this.#recognizer;
    recognizer.switchSearch(id);
    recognizer.start();
    for (let at = 0; at < sound.length; at += CHUNK) {
      for (let i = 0; i < CHUNK; i++) this.#sound.set(i, sound[at + i] ?? 0);
      recognizer.process(this.#sound);
    }
    recognizer.stop();
    const segments = new this.#module.Segmentation();
    recognizer.getHypseg(segments);
    let [score, frames] = [0, 0];
    const words: string[] = [];
    for (let i = 0; i < segments.size(); i++) {
      const { word, start, end, ascr } = segments.get(i);
      score += ascr;
      if (SILENCE.test(word)) continue;
      frames += end - start + 1;
      words.push(word.replace(/\(\d+\)$/, ""));
    }
    segments.delete();
    return { words: words.join(" "), score, frames };
  }
}

/** The engine's own names for what is no word, and our sounds. */
const SILENCE = /^(?:<.*>|\[.*\]|\(.*\)|_.*)$/;
/** The engine keeps the ways to say a word apart by a number. */
const inWay = (word: string, way: number): string => (way === 0 ? word : `${word}(${way + 1})`);
