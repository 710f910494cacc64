import type { LiveJob } from "../../machines/conversation/live-job.ts";
import { digest } from "../../machines/digest/digest.ts";
import type { PersonId } from "../../machines/install/ids.ts";
import { dayAt } from "../../machines/record/oversight/day.ts";
import { askable, isRight, questionFor } from "../../machines/rehearsal/questions/items.ts";
import type { Question } from "../../machines/rehearsal/questions/question.ts";
import { type Card, cardFrom, graded } from "../../machines/rehearsal/repetition.ts";
import { answered, endOf, itemsOfRound, nextOf, type Round, roundFrom, roundOf, seedOf } from "../../machines/rehearsal/round.ts";
import { Problem } from "../input/problem.ts";
import { Changed } from "../journal/catalog.ts";
import type { Journal } from "../journal/journal.ts";
import type { KeptRound, Learner, LearnerId } from "../journal/learning.ts";

/** A round as it is kept, read; and one of its questions with what was answered. */
export type Open = { readonly kept: KeptRound; readonly round: Round };
export type Given = { readonly no: number; readonly given: readonly string[]; readonly shown: string };

/** Somebody on a job, as a learner: `null` where they never answered anything. */
export type Student = { readonly name: string; readonly learner: Learner | null; readonly cards: ReadonlyMap<string, Card> };

const HEX_OF_31_BITS = 7;
/** The number that a round's questions are drawn by, from its id. */
const seedFrom = (id: string): number => Number.parseInt(digest.of(id).slice(0, HEX_OF_31_BITS), 16);

/** Names what a question shows, so that an answer to another one counts for nothing. */
export const shownAs = (question: Question): string => digest.of(question).slice(0, 12);

const jobOf = ({ entries }: LiveJob): string => entries.at(0)!.entry.job;
const today = ({ job, now }: LiveJob): string => dayAt(now.wall, job.frozen.brief.zone);

/** The question of a round by its number from 0; `null` where the job has none for it any more. */
export const questionOf = ({ job }: LiveJob, round: Round, no: number): Question | null =>
  round.asked[no] ? questionFor(job.frozen, round.asked[no].item, seedOf(round, no)) : null;

/** Rounds of questions: begun, asked and answered. What is right is worked out here each time, and never taken from a form. */
export function createStudy({ learning }: Pick<Journal, "learning">, newId: () => string) {
  const cardsOf = async (learner: LearnerId): Promise<ReadonlyMap<string, Card>> =>
    new Map(
      (await learning.cards(learner)).flatMap(({ item, card }) => {
        const read = cardFrom(card);
        return read ? [[item, read] as const] : [];
      }),
    );

  async function student(live: LiveJob, me: PersonId): Promise<Student> {
    const name = live.names[me] ?? me;
    const learner = await learning.learnerCalled(name);
    return { name, learner, cards: learner ? await cardsOf(learner.id) : new Map() };
  }

  /** The learner that somebody is from now on. Nobody whose name was erased is one. */
  async function learnerOf({ names }: LiveJob, me: PersonId): Promise<Learner> {
    const name = names[me];
    if (name === undefined) throw new Problem(422, (w) => w.learn.who);
    return learning.learner(name, newId());
  }

  const read = (kept: KeptRound | null): Open | null => {
    const round = kept && roundFrom(kept.body);
    return kept && round ? { kept, round } : null;
  };

  /** The round of somebody that still goes on: in time, with a question left that can be asked. */
  async function going(live: LiveJob, learner: LearnerId): Promise<Open | null> {
    const last = read(await learning.lastRound(learner, jobOf(live)));
    const next = last && nextOf(last.round);
    if (!last || next === null || live.now.wall > endOf(last.round)) return null;
    return questionOf(live, last.round, next) ? last : null;
  }

  /** Begins a round, or goes on with the one that is going. `null` where there is nothing to ask today. */
  async function begin(live: LiveJob, me: PersonId): Promise<string | null> {
    const learner = await learnerOf(live, me);
    const open = await going(live, learner.id);
    if (open) return open.kept.id;
    const [at, day] = [live.now.wall, today(live)];
    const items = itemsOfRound(askable(live.job.frozen), await cardsOf(learner.id), at, day);
    if (items.length === 0) return null;
    const id = newId();
    const round = roundOf(items, seedFrom(id), at, day);
    await learning.saveRound({ id, learner: learner.id, job: jobOf(live), at, version: 1, body: round }, null);
    return id;
  }

  /** A round of this job and of nobody else. Throws a Problem. */
  async function open(live: LiveJob, me: PersonId | null, id: string): Promise<Open> {
    const found = read(await learning.round(id));
    if (!found || found.kept.job !== jobOf(live)) throw new Problem(404, (w) => w.learn.noRound);
    const mine = me === null ? null : await learning.learnerCalled(live.names[me] ?? "");
    if (mine?.id !== found.kept.learner) throw new Problem(403, (w) => w.learn.otherPhone);
    return found;
  }

  /** Takes an answer, once. Throws a Problem where it comes too late, to another question, or is none of the options. */
  async function answer(live: LiveJob, me: PersonId | null, id: string, { no, given, shown }: Given): Promise<void> {
    const { kept, round } = await open(live, me, id);
    const asked = round.asked[no];
    if (!asked) throw new Problem(422, (w) => w.learn.noOption);
    if (asked.given !== null) {
      if (asked.given.join() !== given.join()) throw new Problem(409, (w) => w.learn.otherAnswer);
      return;
    }
    if (live.now.wall > endOf(round)) throw new Problem(409, (w) => w.learn.tooLate);
    const question = questionOf(live, round, no);
    if (!question || shownAs(question) !== shown) throw new Problem(409, (w) => w.learn.changed);
    if (!isAnswer(question, given)) throw new Problem(422, (w) => w.learn.noOption);
    const after = answered(round, no, given, isRight(question, given));
    const before = (await cardsOf(kept.learner)).get(asked.item) ?? null;
    const card = graded(before, after.grade, live.now.wall, today(live));
    try {
      await learning.saveRound({ ...kept, version: kept.version + 1, body: after.round }, { item: asked.item, card });
    } catch (error) {
      // Two presses at once: the other one was taken, and is told.
      if (!(error instanceof Changed)) throw error;
      return answer(live, me, id, { no, given, shown });
    }
  }

  /** Takes the answer to a question that was asked beside the guide: a round of that one question. */
  async function answerAside(live: LiveJob, me: PersonId, id: string, question: Question, given: readonly string[]): Promise<void> {
    if (!isAnswer(question, given)) throw new Problem(422, (w) => w.learn.noOption);
    const learner = await learnerOf(live, me);
    const [at, day] = [live.now.wall, today(live)];
    const after = answered(roundOf([question.item], 0, at, day), 0, given, isRight(question, given));
    const card = graded((await cardsOf(learner.id)).get(question.item) ?? null, after.grade, at, day);
    const kept = {
      id: `${id}-${learner.id}`,
      learner: learner.id,
      job: jobOf(live),
      at,
      version: 1,
      body: { ...after.round, aside: true },
    };
    try {
      await learning.saveRound(kept, { item: question.item, card });
    } catch (error) {
      // Pressed before: that one counts.
      if (!(error instanceof Changed)) throw error;
    }
  }

  return { student, cardsOf, going, begin, open, answer, answerAside };
}
export type Study = ReturnType<typeof createStudy>;

/** Ids of options, each once; all of them where they are put in order, else one. */
const isAnswer = ({ options, right }: Question, given: readonly string[]): boolean =>
  given.length === right.length && new Set(given).size === given.length && given.every((id) => options.some((option) => option.id === id));
