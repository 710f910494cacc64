import { Hono } from "hono";
import { spokenOn } from "../../machines/speech/languages.ts";
import { NOTHING_ASKED } from "../../machines/speech/listening.ts";
import { PhonePage } from "../../views/pages/phone/view.tsx";
import type { Dependencies, LiveJobs } from "../jobs.ts";
import { wordToTry } from "../voice/pronunciations.ts";
import { page } from "./page.ts";
import { earGrammar, heardAlways } from "./sayable.ts";

/** Whether a phone is fit for a job: the page, the one word that it listens for there, and the server's clock. */
export function phoneRoutes({ wakeWord }: LiveJobs, { clock }: Dependencies) {
  const app = new Hono();
  app.get("/phone", (c) => c.html(page(c, <PhonePage words={c.get("words")} wakeWord={wordToTry(wakeWord)} />)));
  app.get("/phone/clock.json", (c) => c.json({ now: clock().wall }, 200, { "cache-control": "no-store" }));
  app.get("/phone/sayable.json", (c) => {
    const language = spokenOn(c.get("words").lang);
    const { holds } = language.sayableAt(NOTHING_ASKED);
    const heard = heardAlways({ orders: [wordToTry(wakeWord)], questions: [], holds }, language, wakeWord);
    return c.json(earGrammar(heard, [], wakeWord));
  });
  return app;
}
