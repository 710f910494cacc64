import type { Engine } from "./recognizer.ts";
import type { VoiceStatus } from "./status.ts";

/** What an engine's error comes to for the one who holds the phone. */
export const ERRORS: Readonly<Partial<Record<string, VoiceStatus>>> = {
  "not-allowed": "denied",
  "service-not-allowed": "notHere",
  "audio-capture": "noMicrophone",
  "language-not-supported": "language",
  filesMissing: "filesMissing",
  filesBroken: "filesBroken",
  engineFailed: "engineFailed",
};
/** No other engine has a microphone where one has none. */
export const SAME_FOR_ALL: ReadonlySet<VoiceStatus> = new Set<VoiceStatus>(["denied", "noMicrophone"]);

/** The engine that this browser has, or null. */
export const browserEngine = (): Engine | null => {
  const has = globalThis as { SpeechRecognition?: Engine; webkitSpeechRecognition?: Engine };
  return has.SpeechRecognition ?? has.webkitSpeechRecognition ?? null;
};

/** What newer browsers have besides, and the declarations of others do not. */
type OnPhone = {
  readonly available?: (asked: { langs: readonly string[]; processLocally: boolean }) => Promise<string>;
};
type Phrase = new (phrase: string, boost: number) => object;
type Hinted = { processLocally?: boolean; phrases?: object[] };
/** How much likelier what can be said is than other words, on the standard's scale from 0 to 10. */
const BOOST = 3;

/**
 * Whether the browser's engine works on the phone itself. Asked only when somebody presses for it: a browser that has the question and not the
 * answer loses the page (Chromium's headless shell, 156).
 */
export async function worksHere(engine: Engine, lang: string): Promise<boolean> {
  const { available } = engine as OnPhone;
  if (!available) return false;
  return (await available.call(engine, { langs: [lang], processLocally: true }).catch(() => "unavailable")) === "available";
}

/** The browser's engine, told to stay on the phone; and what can be said, where it takes hints: `phrases` is asked each time it starts. */
export const stayingHere = (engine: Engine, phrases: () => readonly string[]): Engine =>
  class extends engine {
    constructor() {
      super();
      (this as Hinted).processLocally = true;
    }
    override start(): void {
      const { SpeechRecognitionPhrase } = globalThis as { SpeechRecognitionPhrase?: Phrase };
      if (SpeechRecognitionPhrase && "phrases" in this)
        (this as Hinted).phrases = phrases().map((phrase) => new SpeechRecognitionPhrase(phrase, BOOST));
      super.start();
    }
  };
