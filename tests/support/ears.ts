import { exactly, exactlyEach, yes } from "../../machines/install/gates.ts";
import type { Step } from "../../machines/install/step.ts";
import { english } from "../../machines/speech/en/english.ts";
import { hear, type ListeningContext } from "../../machines/speech/hear.ts";
import { stepWith } from "./steps.ts";

/** A guide listening at a call, in English, to a crew at work; `more` changes what it knows. */
export const ears = (step: Step | null, more: Partial<ListeningContext> = {}): ListeningContext => ({
  listening: { step, asks: null },
  attention: "working",
  waiting: false,
  wakeWord: "albatross",
  stopGustMph: 30,
  language: english,
  ...more,
});

/** Calls of each kind: none, a plain one, a hold, a wait, a wind gate, and counts by side. */
export const EVERYWHERE: readonly ListeningContext[] = [
  ears(null),
  ears(stepWith(null, { wordsKey: "lace.ring" })),
  ears(stepWith(yes, { wordsKey: "warning" }), { attention: "held" }),
  ears(stepWith(exactly(6), { wordsKey: "under.out" }), { waiting: true }),
  ears(stepWith({ kind: "wind", belowMph: 20 })),
  ears(stepWith(exactlyEach({ AB: 11, BC: 9 }))),
];

/** What is made of some words, or of a recognizer's alternatives, said with the talk button held or not. */
export const said = (words: string | string[], talk: boolean, at: ListeningContext) => hear({ alternatives: [words].flat(), talk }, at);
