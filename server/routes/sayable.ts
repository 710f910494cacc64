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
  app.get("/jobs/:id{[\\w-]+}/sayable.json", async (c) => {
    const { job, now } = await liveJobs.load(c.req.param("id"));
    const language = spokenOn(c.get("words").lang);
    const sayable = language.sayableAt({ step: currentStep(job), asks: questionAt(job, now.at) });
    return c.json(earGrammar(sayable, language, liveJobs.wakeWord));
  });
  return app;
}

/**
 * Through an open microphone what counts as it stands, and all else after the wake word; with the button held all of it, with the wake
 * word or without. What lets go of a hold wants the wake word or the button. A wake word that no dictionary knows is listened for by
 * nobody: the button is.
 */
export function earGrammar({ answers, orders, questions, holds }: Sayable, language: Language, wakeWord: string): EarGrammar {
  const after = (phrases: readonly string[]) => (isPronounceable(wakeWord) ? phrases.map((phrase) => `${wakeWord} ${phrase}`) : []);
  const letsGo = (phrase: string) => {
    const meant = language.understand(phrase, NOTHING_ASKED);
    return "intent" in meant && meant.intent.type === "carryOn";
  };
  const asked = [...orders, ...questions];
  const releases = asked.filter(letsGo);
  const bare = asked.filter((phrase) => language.isBare(phrase) && !releases.includes(phrase));
  const talk = [...asked, ...after(asked)];
  return {
    always: { open: [...bare, ...after(asked)], talk },
    answers: { open: after(answers), talk: [...answers, ...after(answers)] },
    holds,
    releases: [...releases, ...after(releases)],
    ways: pronunciationsOf(wordsIn(wordGraph([...talk, ...answers, ...holds], numberGraph))),
  };
}
