import type { Engine } from "../recognizer.ts";
import type { EarTold, OwnEar } from "./own-ear.ts";

/** Errors of `getUserMedia`, as the speech standard names what they come to. */
const MICROPHONE_ERRORS: Readonly<Record<string, string>> = {
  NotAllowedError: "not-allowed",
  SecurityError: "not-allowed",
  NotFoundError: "audio-capture",
  NotReadableError: "audio-capture",
  OverconstrainedError: "audio-capture",
};

/** This phone's own ear in the W3C's shape of a recognizer. It gives one reading of what was said, and only when it is whole. */
export function ownEngine(ear: OwnEar): Engine {
  class OwnRecognizer extends EventTarget {
    continuous = true;
    interimResults = false;
    lang = "";
    maxAlternatives = 1;
    onstart: (() => void) | null = null;
    onend: (() => void) | null = null;
    onsoundstart: (() => void) | null = null;
    onspeechstart: (() => void) | null = null;
    onresult: ((event: object) => void) | null = null;
    onerror: ((event: object) => void) | null = null;
    #running = false;
    #results: object[] = [];
    readonly #told: EarTold = {
      began: () => {
        this.onsoundstart?.();
        this.onspeechstart?.();
      },
      heard: ({ words: transcript, fit }) => {
        this.#results.push(Object.assign([{ transcript, confidence: confidenceOf(fit) }], { isFinal: true }));
        this.onresult?.({ resultIndex: this.#results.length - 1, results: this.#results });
      },
      cut: () => this.#end(),
      gone: () => this.#end(),
      trouble: (error) => this.#fail(error),
    };

    start(): void {
      if (this.#running) throw new DOMException("already started", "InvalidStateError");
      this.#running = true;
      this.#results = [];
      ear.open(this.#told).then(
        () => this.#running && this.onstart?.(),
        // An engine that cannot be had has told so itself.
        (error: unknown) => error instanceof Error && this.#fail(MICROPHONE_ERRORS[error.name] ?? "engineFailed"),
      );
    }
    stop(): void {
      ear.cut();
    }
    abort(): void {
      setTimeout(() => this.#end());
    }

    #fail(error: string): void {
      if (this.#running) this.onerror?.({ error });
      this.#end();
    }
    #end(): void {
      if (!this.#running) return;
      this.#running = false;
      ear.close(this.#told);
      this.onend?.();
    }
  }
  return OwnRecognizer as unknown as Engine;
}

/** From how well it fits to the standard's scale from 0 to 1; never 0, which stands for a half sentence on some phones. */
const confidenceOf = (fit: number): number => 1 / (1 + Math.exp(-(fit + 20) / 8));
