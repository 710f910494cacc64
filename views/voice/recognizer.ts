import { languageHere } from "./languages.ts";

/** Something that turns sound into words, of the W3C's shape. */
export type Engine = new () => SpeechRecognition;
/** One thing said: its readings, best first, and when it began, in ms of `performance.now()`. */
export type Utterance = { readonly alternatives: readonly string[]; readonly began: number; readonly tooLong: boolean };

const MAX_CHARACTERS = 300;
const MAX_ALTERNATIVES = 5;
/** How long the first words take to come back from an engine. Where nothing better is known, speech began so long before. */
const LAG_MS = 800;
/** A start of speech that no words followed for so long was a noise. */
const ONSET_MS = 6000;
/** Within this, the same words without a new start of speech are the same result again. */
const AGAIN_MS = 1500;
/** Some engines give what was said before once more, joined, just before they end. */
const JOINED_MS = 10_000;

/** A final without confidence is whole when nothing has come after it for so long. */
const QUIET_MS = 700;

type Final = { readonly text: string; readonly at: number };
type RecognizedText = { readonly all: readonly string[]; readonly began: number; readonly fresh: boolean };

const textsOf = (result: SpeechRecognitionResult): string[] => Array.from(result, (r) => r.transcript.trim()).filter((t) => t !== "");

/**
 * A recognizer of the W3C's shape over the engine that there is, made for annyang: it passes on whole utterances only,
 * each once, with the moment at which it began. Another engine takes this one's place by being given here.
 */
export function utteranceRecognizer(engine: Engine, take: (spoken: Utterance) => void): Engine {
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
    readonly #inner = new engine();
    #onset: number | null = null;
    #first: number | null = null;
    #finals: Final[] = [];
    #growing: RecognizedText | null = null;
    #quiet: number | undefined;
    /** What was taken since the engine started, by its place: some engines give it again from the first. */
    readonly #done = new Map<number, string>();

    constructor() {
      super();
      const inner = this.#inner;
      inner.onstart = () => {
        this.#done.clear();
        this.onstart?.();
      };
      inner.onsoundstart = () => this.onsoundstart?.();
      inner.onend = () => {
        this.#settle();
        this.#onset = null;
        this.#first = null;
        this.onend?.();
      };
      inner.onerror = (event) => this.onerror?.(event);
      inner.onspeechstart = () => {
        this.#onset = performance.now();
      };
      inner.onresult = (event) => this.#heard(event);
    }
    start(): void {
      this.#inner.continuous = this.continuous;
      this.#inner.lang = this.lang;
      this.#inner.maxAlternatives = this.maxAlternatives;
      // Halves of sentences tell when speech began; they are never passed on.
      this.#inner.interimResults = true;
      this.#inner.start();
    }
    stop(): void {
      this.#inner.stop();
    }
    abort(): void {
      this.#inner.abort();
    }

    #heard(event: SpeechRecognitionEvent): void {
      for (let i = event.resultIndex; i < event.results.length; i++) {
        const result = event.results[i];
        if (!result || this.#done.get(i) === result[0]?.transcript) continue;
        this.#first ??= performance.now();
        if (!result.isFinal) continue;
        this.#done.set(i, result[0]?.transcript ?? "");
        this.#final(result);
      }
    }

    /** Some phones call each half of a sentence final, with no confidence in it: such a one waits for what it grows into. */
    #final(result: SpeechRecognitionResult): void {
      const now = performance.now();
      const said: RecognizedText = {
        all: textsOf(result),
        began: this.#began(now),
        fresh: this.#onset !== null || (this.#first ?? now) < now,
      };
      const [text = ""] = said.all;
      const grown = this.#growing && text.toLowerCase().startsWith(this.#growing.all[0]?.toLowerCase() ?? "");
      if (this.#growing && !grown) this.#settle();
      const whole = grown && this.#growing ? { ...said, began: this.#growing.began, fresh: true } : said;
      clearTimeout(this.#quiet);
      this.#growing = null;
      if (result[0]?.confidence !== 0 || whole.all.some(languageHere().isHold)) {
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

    #pass({ all, began, fresh }: RecognizedText): void {
      const now = performance.now();
      this.#onset = null;
      this.#first = null;
      const { held, isHold } = languageHere();
      // A hold in ten kilobytes of words is still a hold.
      const alternatives = all
        .map((t) => (t.length > MAX_CHARACTERS && isHold(t) ? held : t))
        .filter((t) => t.length <= MAX_CHARACTERS)
        .slice(0, MAX_ALTERNATIVES);
      const [text] = all;
      if (text === undefined || this.#isRepeat(text, now, fresh)) return;
      this.#finals = [...this.#finals, { text, at: now }].slice(-4);
      take({ alternatives, began, tooLong: alternatives.length === 0 });
      if (alternatives.length > 0) this.onresult?.(asEvent(alternatives));
    }

    /** When the utterance began: at its own onset, or a little before its first words came. */
    #began(now: number): number {
      const first = this.#first ?? now;
      return this.#onset !== null && first - this.#onset < ONSET_MS ? this.#onset : first - LAG_MS;
    }

    #isRepeat(text: string, now: number, fresh: boolean): boolean {
      const last = this.#finals.at(-1);
      if (last && !fresh && last.text === text && now - last.at < AGAIN_MS) return true;
      const recent = this.#finals.filter((f) => now - f.at < JOINED_MS).map((f) => f.text.toLowerCase());
      return recent.some((_, i) => recent.length - i >= 2 && recent.slice(i).join(" ") === text.toLowerCase());
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
