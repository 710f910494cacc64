import { Hono } from "hono";
import { currentStep, questionAt } from "../../machines/install/job.ts";
import { numberGraph } from "../../machines/speech/en/number-graph.ts";
import type { Language } from "../../machines/speech/language.ts";
import { spokenOn } from "../../machines/speech/languages.ts";
import { NOTHING_ASKED } from "../../machines/speech/listening.ts";
import type { Sayable } from "../../machines/speech/sayable.ts";
import { wordGraph, wordsIn } from "../../machines/speech/word-graph.ts";
import type { EarGrammar } from "../../views/voice/own/grammar.ts";
import type { LiveJobs } from "../jobs.ts";
import { isPronounceable, pronunciationsOf } from "../voice/pronunciations.ts";

/** What a phone's own ear listens for where the job stands. */
export function sayableRoutes(liveJobs: LiveJobs) {
  const app = new Hono();
  /** The same at every call, and long: worked out once for each language. */
  const known = new Map<Language, HeardAlways>();
  app.get("/jobs/:id{[\\w-]+}/sayable.json", async (c) => {
    const { job, now } = await liveJobs.load(c.req.param("id"));
    const language = spokenOn(c.get("words").lang);
    const sayable = language.sayableAt({ step: currentStep(job), asks: questionAt(job, now.at) });
    const always = known.get(language) ?? heardAlways(sayable, language, liveJobs.wakeWord);
    known.set(language, always);
    return c.json(earGrammar(always, sayable.answers, liveJobs.wakeWord));
  });
  return app;
}

/** What is listened for at every call. */
export type HeardAlways = Omit<EarGrammar, "answers">;

/** A wake word that no dictionary knows is listened for by nobody: the button is. */
const after = (wakeWord: string, phrases: readonly string[]) =>
  isPronounceable(wakeWord) ? phrases.map((phrase) => `${wakeWord} ${phrase}`) : [];
const waysOf = (phrases: readonly string[]) => pronunciationsOf(wordsIn(wordGraph(phrases, numberGraph)));

/**
 * Through an open microphone what counts as it stands, and all else after the wake word; with the button held all of it, with the wake
 * word or without. What lets go of a hold wants the wake word or the button.
 */
export function heardAlways(
  { orders, questions, holds }: Omit<Sayable, "answers">,
  { understand, isBare }: Language,
  wakeWord: string,
): HeardAlways {
  const letsGo = (phrase: string) => {
    const meant = understand(phrase, NOTHING_ASKED);
    return "intent" in meant && meant.intent.type === "carryOn";
  };
  const asked = [...orders, ...questions];
  const releases = asked.filter(letsGo);
  const bare = asked.filter((phrase) => isBare(phrase) && !releases.includes(phrase));
  const addressed = after(wakeWord, asked);
  const talk = [...asked, ...addressed];
  return {
    always: { open: [...bare, ...addressed], talk },
    holds,
    releases: [...releases, ...after(wakeWord, releases)],
    ways: waysOf([...talk, ...holds]),
  };
}

/** The same, and the answers of a call: after the wake word, or with the button held. */
export function earGrammar(heard: HeardAlways, answers: readonly string[], wakeWord: string): EarGrammar {
  const addressed = after(wakeWord, answers);
  return {
    ...heard,
    answers: { open: addressed, talk: [...answers, ...addressed] },
    ways: answers.length > 0 ? { ...heard.ways, ...waysOf(answers) } : heard.ways,
  };
}
