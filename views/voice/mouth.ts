import { languageHere } from "./languages.ts";
import { settings } from "./settings.ts";

/** Echo and a late recognizer: what began so long after the last word was still our own. */
const TAIL_MS = 400;
/** Some browsers never say that they have finished: then this a letter, and no less than a moment. */
const LETTER_MS = 110;
const MIN_MS = 2500;

/** Speaks, one thing at a time, and knows when it did: what is heard meanwhile is its own voice. */
export class Speaker {
  #from = Number.POSITIVE_INFINITY;
  #until = Number.NEGATIVE_INFINITY;
  #text = "";
  #timer: number | undefined;
  #tail: number | undefined;
  /** Kept: an utterance that is collected never says that it has ended. */
  #saying: SpeechSynthesisUtterance | null = null;
  quiet = false;
  /** Told when it begins to speak, and when it and its echo have ended. */
  onSpeaking = (_: boolean) => {};

  /** An empty word on the first press: without it some phones stay silent for good. */
  open(): void {
    if (this.#canSpeak()) speechSynthesis.speak(new SpeechSynthesisUtterance(""));
  }

  say(text: string): void {
    this.hush();
    if (this.quiet || text === "" || !this.#canSpeak()) return;
    const saying = new SpeechSynthesisUtterance(languageHere().aloud(text));
    saying.lang = document.documentElement.lang;
    saying.rate = settings.rate;
    saying.voice = speechSynthesis.getVoices().find(({ name }) => name === settings.voice) ?? null;
    this.#saying = saying;
    this.#text = text;
    this.#from = performance.now();
    this.#until = Number.POSITIVE_INFINITY;
    clearTimeout(this.#tail);
    this.#show(true);
    const ended = () => saying === this.#saying && this.#ended();
    saying.onend = ended;
    saying.onerror = ended;
    this.#timer = window.setTimeout(ended, Math.max(MIN_MS, (text.length * LETTER_MS) / settings.rate));
    speechSynthesis.speak(saying);
  }

  /** Stops at once. */
  hush(): void {
    if (!this.#saying) return;
    this.#ended();
    speechSynthesis.cancel();
  }

  /**
   * Whether what began at a moment was our own voice. What can only stop work is taken even then, unless it is a part of what was
   * being said: a hold word in any of the readings, an alarm in the likeliest.
   */
  isOwn(began: number, alternatives: readonly string[]): boolean {
    if (began < this.#from || began > this.#until) return false;
    const { aloud, holdsInside, isAlarm, isEchoOf, isPartOf } = languageHere();
    const [best = ""] = alternatives;
    if (isAlarm(best) && ![this.#text, aloud(this.#text)].some((text) => isEchoOf(best, text))) return false;
    return !alternatives.some((heard) => holdsInside(heard) && !isPartOf(heard, this.#text));
  }

  #ended(): void {
    clearTimeout(this.#timer);
    this.#saying = null;
    this.#until = performance.now() + TAIL_MS;
    this.#tail = window.setTimeout(() => this.#show(false), TAIL_MS);
  }
  #show(is: boolean): void {
    document.body.classList.toggle("speaking", is);
    this.onSpeaking(is);
  }
  #canSpeak(): boolean {
    return "speechSynthesis" in window && speechSynthesis.getVoices().length > 0;
  }
}
