import { languageHere } from "./languages.ts";

/** Something that turns sound into words, of the W3C's shape. */
export type Engine = new () => SpeechRecognition;
/**
 * One thing said: its readings, best first, and when it began, in ms of `performance.now()`. `id` is its own: whatever an
 * engine gives of it, and however late, no other utterance has the same.
 */
export type Utterance = {
  readonly id: number;
  readonly alternatives: readonly string[];
  readonly began: number;
  readonly tooLong: boolean;
};

const MAX_CHARACTERS = 300;
const MAX_ALTERNATIVES = 5;
/** How long the first words take to come back from an engine. Where nothing better is known, speech began so long before. */
const LAG_MS = 800;
/** A start of speech that no words followed for so long was a noise. */
const ONSET_MS = 6000;
/** Some engines give what was said before once more, joined, just before they end: of at most so many utterances. */
const MAX_JOINED = 20;
/** A final without confidence is whole when nothing has come after it for so long. */
const QUIET_MS = 700;

type RecognizedText = { readonly id: number; readonly all: readonly string[]; readonly began: number };

const textsOf = (result: SpeechRecognitionResult): string[] => Array.from(result, (r) => r.transcript.trim()).filter((t) => t !== "");

/**
 * A recognizer of the W3C's shape over the engine that there is, made for annyang: it passes on whole utterances only,
 * each once, with the moment at which it began. Each time it starts it asks which engine that is.
 */
export function utteranceRecognizer(engineNow: () => Engine, take: (spoken: Utterance) => void): Engine {
  let ids = 0;
  class Recognizer extends EventTarget {
    continuous = true;
    interimResults = false;
    lang = languageHere().listens;
    maxAlternatives = MAX_ALTERNATIVES;
    onstart: (() => void) | null = null;
    onend: (() => void) | null = null;
    onsoundstart: (() => void) | null = null;
    onresult: ((event: SpeechRecognitionEvent) => void) | null = null;
    onerror: ((event: SpeechRecognitionErrorEvent) => void) | null = null;
    #engine: Engine | null = null;
    #inner: SpeechRecognition | null = null;
    #onset: number | null = null;
    #first: number | null = null;
    /** The utterance that is being heard. Null between one that was passed on and a sign that the next has begun. */
    #id: number | null = null;
    /** Places whose words are not final yet: each is a sign that something is being said. */
    readonly #open = new Set<number>();
    /** What was final since the engine started, by its place: some engines give it again from the first. */
    readonly #done = new Map<number, string>();
    /** What was passed on since then, in order: some give it again as one more. */
    #passed: string[] = [];
    #growing: RecognizedText | null = null;
    #quiet: number | undefined;

    start(): void {
      const engine = engineNow();
      if (engine !== this.#engine) this.#inner = this.#listenTo(new engine());
      this.#engine = engine;
      const inner = this.#inner!;
      inner.continuous = this.continuous;
      inner.lang = this.lang;
      inner.maxAlternatives = this.maxAlternatives;
      // Halves of sentences tell when speech began; they are never passed on.
      inner.interimResults = true;
      inner.start();
    }
    /** An engine that another took the place of is heard no more. */
    #listenTo(inner: SpeechRecognition): SpeechRecognition {
      const now = (act: () => void) => () => {
        if (inner === this.#inner) act();
      };
      inner.onstart = now(() => {
        this.#done.clear();
        this.#open.clear();
        this.#passed = [];
        this.#id = null;
        this.onstart?.();
      });
      inner.onsoundstart = now(() => this.onsoundstart?.());
      inner.onend = now(() => {
        this.#settle();
        this.#onset = null;
        this.#first = null;
        this.onend?.();
      });
      inner.onerror = (event) => inner === this.#inner && this.onerror?.(event);
      inner.onspeechstart = now(() => {
        this.#onset = performance.now();
        this.#begin();
      });
      inner.onresult = (event) => inner === this.#inner && this.#heard(event);
      return inner;
    }
    stop(): void {
      this.#inner?.stop();
    }
    abort(): void {
      this.#inner?.abort();
    }

    /** Speech began, or words came: an utterance of its own, unless the one before is not whole yet. */
    #begin(): number {
      this.#id ??= ++ids;
      return this.#id;
    }

    #heard(event: SpeechRecognitionEvent): void {
      for (let i = event.resultIndex; i < event.results.length; i++) {
        const result = event.results[i];
        const text = result?.[0]?.transcript;
        if (!result || text === undefined || (result.isFinal && this.#done.get(i) === text)) continue;
        this.#first ??= performance.now();
        if (!result.isFinal) {
          this.#done.delete(i);
          this.#open.add(i);
          this.#begin();
          continue;
        }
        const revised = this.#done.has(i);
        this.#open.delete(i);
        this.#done.set(i, text);
        this.#final(result, revised);
      }
    }

    /** Some phones call each half of a sentence final, with no confidence in it: such a one waits for what it grows into. */
    #final(result: SpeechRecognitionResult, revised: boolean): void {
      const all = textsOf(result);
      const before = this.#growing;
      const grown = before !== null && (all[0] ?? "").toLowerCase().startsWith(before.all[0]?.toLowerCase() ?? "");
      if (before && !grown) this.#settle();
      const holds = all.some(languageHere().isHold);
      // Only what nothing tells apart from the last utterance is that one again. A hold is not, where it was none before.
      if (this.#id === null && (revised ? !holds : this.#isRepeat(all[0] ?? ""))) {
        this.#first = null;
        return;
      }
      const now = performance.now();
      const whole = { id: this.#begin(), all, began: grown ? before.began : this.#began(now) };
      clearTimeout(this.#quiet);
      this.#growing = null;
      if (result[0]?.confidence !== 0 || holds) {
        this.#pass(whole);
        return;
      }
      this.#growing = whole;
      this.#quiet = window.setTimeout(() => this.#settle(), QUIET_MS);
    }
    #settle(): void {
      clearTimeout(this.#quiet);
      const said = this.#growing;
      this.#growing = null;
      if (said) this.#pass(said);
    }

    #pass({ id, all, began }: RecognizedText): void {
      this.#id = null;
      this.#onset = null;
      this.#first = null;
      const { held, isHold } = languageHere();
      const [text] = all;
      if (text === undefined) return;
      this.#passed = [...this.#passed, text].slice(-MAX_JOINED);
      // A hold in ten kilobytes of words is still a hold.
      const alternatives = all
        .map((t) => (t.length > MAX_CHARACTERS && isHold(t) ? held : t))
        .filter((t) => t.length <= MAX_CHARACTERS)
        .slice(0, MAX_ALTERNATIVES);
      take({ id, alternatives, began, tooLong: alternatives.length === 0 });
      if (alternatives.length > 0) this.onresult?.(asEvent(alternatives));
    }

    /** When the utterance began: at its own onset, or a little before its first words came. */
    #began(now: number): number {
      const first = this.#first ?? now;
      return this.#onset !== null && first - this.#onset < ONSET_MS ? this.#onset : first - LAG_MS;
    }

    /** The last of what was passed on, or the last few joined. */
    #isRepeat(text: string): boolean {
      const passed = this.#passed.map((t) => t.toLowerCase());
      return passed.some((_, i) => passed.slice(i).join(" ") === text.toLowerCase());
    }
  }
  return Recognizer as unknown as Engine;
}

/** What annyang reads of a result. */
function asEvent(alternatives: readonly string[]): SpeechRecognitionEvent {
  const result = Object.assign(
    alternatives.map((transcript) => ({ transcript, confidence: 0 })),
    { isFinal: true },
  );
  return { resultIndex: 0, results: [result] } as unknown as SpeechRecognitionEvent;
}
