import { type Context, Hono } from "hono";
import type { LiveJob } from "../../machines/conversation/live-job.ts";
import { dayAt } from "../../machines/record/oversight/day.ts";
import { asideAt } from "../../machines/rehearsal/aside.ts";
import { askable } from "../../machines/rehearsal/questions/items.ts";
import type { Question } from "../../machines/rehearsal/questions/question.ts";
import { itemsOfRound, nextOf } from "../../machines/rehearsal/round.ts";
import { AsideTold, AsideToldPage } from "../../views/pages/learn/aside.tsx";
import { buildAsking, buildEnded, buildStanding, buildTold, type Kept } from "../../views/pages/learn/build-state.ts";
import { EndedPage, QuestionPage, ToldPage } from "../../views/pages/learn/question.tsx";
import type { LearnState } from "../../views/pages/learn/state.ts";
import { LearnPage } from "../../views/pages/learn/view.tsx";
import { Problem } from "../input/problem.ts";
import type { Dependencies, LiveJobs } from "../jobs.ts";
import type { Journal } from "../journal/journal.ts";
import type { Rehearsed } from "../journal/learning.ts";
import type { Asides } from "../learning/asides.ts";
import { createStudy, type Open, questionOf, type Student, shownAs } from "../learning/study.ts";
import type { Presence } from "../presence.ts";
import { formBody } from "./body.ts";
import { screenOn } from "./guide.tsx";
import { handsOf } from "./hands-of.ts";
import { page } from "./page.ts";
import { holderOf } from "./screen.ts";

/** Rehearsals as they are shown: whether each one's job is still there. */
export async function keptRehearsals(journal: Journal, rows: readonly Rehearsed[]): Promise<Kept[]> {
  return Promise.all(rows.map(async (row) => ({ ...row, isGone: (await journal.fold(row.job)) === null })));
}

/** Learning on one job: what to do today, and questions, one a page. None of it is in the job's record. */
export function learnRoutes(liveJobs: LiveJobs, world: Dependencies & { readonly presence: Presence; readonly asides: Asides }) {
  const { journal, newId } = world;
  const app = new Hono();
  const study = createStudy(journal, newId);
  const screenOf = screenOn(world);
  const loaded = (c: Context) => liveJobs.load(c.req.param("id")!);
  const pathOf = (c: Context, rest = "") => `/jobs/${c.req.param("id")!}/learn${rest}`;

  // In a rehearsal that answers back nobody goes by their own name: questions are asked on the job that it was made from.
  app.use("/jobs/:id{[\\w-]+}/learn/*", async (c, next) => {
    const live = await loaded(c);
    if (!live.job.frozen.brief.practice) return next();
    const row = await journal.learning.rehearsalOf(c.req.param("id")!);
    if (!row?.from) throw new Problem(409, (w) => w.learn.notHere);
    return c.redirect(`/jobs/${row.from}/learn`, 303);
  });
  app.get("/jobs/:id{[\\w-]+}/learn", async (c) => {
    const live = await loaded(c);
    const me = holderOf(c, live);
    const state = me === null || live.names[me] === undefined ? null : await stateOf(c, live, await study.student(live, me));
    return c.html(page(c, <LearnPage screen={screenOf(c, live)} state={state} />));
  });
  // Begins a round, or goes on with the one that is going: a press that comes twice begins one.
  app.post("/jobs/:id{[\\w-]+}/learn", async (c) => {
    const live = await loaded(c);
    const round = await study.begin(live, someone(c, live));
    return c.redirect(round === null ? pathOf(c) : pathOf(c, `/questions?round=${round}`), 303);
  });

  app.get("/jobs/:id{[\\w-]+}/learn/questions", async (c) => {
    const live = await loaded(c);
    const asked = c.req.query("round");
    if (asked === undefined) return c.redirect(pathOf(c), 303);
    const open = await study.open(live, holderOf(c, live), asked);
    const said = numberIn(c.req.query("no"));
    if (said !== null && open.round.asked[said]?.given) return c.html(page(c, toldPage(c, live, open, said)));
    const next = nextOf(open.round);
    if (next === null) return c.html(page(c, <EndedPage screen={screenOf(c, live)} ended={buildEnded(open.round)} />));
    const of = questionIn(live, open, next);
    const asking = buildAsking(of, (c.req.query("so") ?? "").split(","), c.get("words"));
    return c.html(page(c, <QuestionPage screen={screenOf(c, live)} plan={live.job.frozen.plan} asking={asking} />));
  });
  app.post("/jobs/:id{[\\w-]+}/learn/questions", async (c) => {
    const live = await loaded(c);
    const { round = "", no = "", given = "", shown = "" } = await formBody(c);
    const number = numberIn(no);
    if (number === null) throw new Problem(422, (w) => w.learn.noOption);
    await study.answer(live, holderOf(c, live), round, { no: number, given: given.split(","), shown });
    return c.redirect(pathOf(c, `/questions?round=${encodeURIComponent(round)}&no=${number}`), 303);
  });

  // The question beside the guide: answered in its place, or on a page of its own where no script swaps it.
  app.post("/jobs/:id{[\\w-]+}/learn/aside", async (c) => {
    const live = await loaded(c);
    const me = someone(c, live);
    const { id = "", shown = "", given = "" } = await formBody(c);
    const aside = asideAt(live.job, live.entries, live.now.at);
    if (aside?.id !== id || shownAs(aside.question) !== shown) throw new Problem(409, (w) => w.learn.asideGone);
    await study.answerAside(live, me, id, aside.question, [given]);
    world.asides.answered(id, me);
    const words = c.get("words");
    const round = { seed: 0, day: "", at: 0, asked: [{ item: aside.question.item, given: [given], grade: null }] };
    const told = buildTold({ id, round, no: 0, question: aside.question, shown }, handsOf(aside.question), words);
    if (c.req.header("hx-request-type") === "partial") return c.html(await (<AsideTold told={told} words={words} />).toString());
    return c.html(page(c, <AsideToldPage screen={screenOf(c, live)} told={told} />));
  });
  return app;

  async function stateOf(c: Context, live: LiveJob, { learner, cards }: Student): Promise<LearnState> {
    const words = c.get("words");
    const { frozen } = live.job;
    const { zone } = frozen.brief;
    const at = live.now.wall;
    const items = askable(frozen);
    const ask = itemsOfRound(items, cards, at, dayAt(at, zone));
    const due = ask.filter((id) => cards.has(id)).length;
    const later = items.map(({ id }) => cards.get(id)?.dueAt ?? at).filter((dueAt) => dueAt > at);
    const rehearsals = learner ? await keptRehearsals(journal, await journal.learning.rehearsalsOf(learner.id)) : [];
    return {
      today: {
        due,
        fresh: ask.length - due,
        nextDay: later.length === 0 ? null : words.when.day(zone, Math.min(...later)),
        going: learner ? ((await study.going(live, learner.id))?.kept.id ?? null) : null,
      },
      standing: buildStanding({ items, cards, rehearsals }, at, zone, words),
    };
  }

  /** A question of a round as it stands on its page. Throws a Problem where the job has none for it any more. */
  function questionIn(live: LiveJob, { kept, round }: Open, no: number) {
    const question: Question | null = questionOf(live, round, no);
    if (!question) throw new Problem(409, (w) => w.learn.changed);
    return { id: kept.id, round, no, question, shown: shownAs(question) };
  }

  function toldPage(c: Context, live: LiveJob, open: Open, no: number) {
    const of = questionIn(live, open, no);
    return <ToldPage screen={screenOf(c, live)} plan={live.job.frozen.plan} told={buildTold(of, handsOf(of.question), c.get("words"))} />;
  }

  /** Who holds this screen. Throws a Problem where nobody said so. */
  function someone(c: Context, live: LiveJob): string {
    const me = holderOf(c, live);
    if (me === null) throw new Problem(422, (w) => w.learn.who);
    return me;
  }
}

const numberIn = (text: string | undefined): number | null => (text !== undefined && /^\d{1,3}$/.test(text) ? Number(text) : null);
