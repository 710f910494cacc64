import type { Engine } from "./recognizer.ts";
import type { VoiceStatus } from "./status.ts";

/** What an engine's error comes to for the one who holds the phone. */
export const ERRORS: Readonly<Partial<Record<string, VoiceStatus>>> = {
  "not-allowed": "denied",
  "service-not-allowed": "denied",
  "audio-capture": "noMicrophone",
  "language-not-supported": "language",
};

/** The engine that this browser has, or null. */
export const engineHere = (): Engine | null => {
  const has = globalThis as { SpeechRecognition?: Engine; webkitSpeechRecognition?: Engine };
  return has.SpeechRecognition ?? has.webkitSpeechRecognition ?? null;
};
