import { Hono } from "hono";
import { ITEMS } from "../../machines/rehearsal/questions/items.ts";
import { buildStanding } from "../../views/pages/learn/build-state.ts";
import { LearningPage } from "../../views/pages/learning/view.tsx";
import type { Dependencies } from "../jobs.ts";
import { createStudy } from "../learning/study.ts";
import { keptRehearsals } from "./learn.tsx";
import { page } from "./page.ts";

/** Who learns, for the office: everybody, over all there is to ask about any tent. */
export function learningRoutes({ journal, clock, newId }: Dependencies) {
  const study = createStudy(journal, newId);
  return new Hono().get("/learning", async (c) => {
    const words = c.get("words");
    const { wall } = clock();
    const learners = await Promise.all(
      (await journal.learning.learners()).map(async ({ id, name }) => {
        const rehearsals = await keptRehearsals(journal, await journal.learning.rehearsalsOf(id));
        return { id, name, standing: buildStanding({ items: ITEMS, cards: await study.cardsOf(id), rehearsals }, wall, "UTC", words) };
      }),
    );
    return c.html(page(c, <LearningPage learners={learners} words={words} />));
  });
}
