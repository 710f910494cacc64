import { type CardInput, createEmptyCard, fsrs, Rating } from "ts-fsrs";
import type { WallTime } from "../install/ids.ts";

/** How a question went: right at the first try, right after it was missed in the same round, or missed. Nobody says how hard it was. */
export const GRADES = ["right", "afterMiss", "missed"] as const;
export type Grade = (typeof GRADES)[number];
const RATED = { right: Rating.Good, afterMiss: Rating.Hard, missed: Rating.Again } as const;

/** A day of the site's calendar, as 2026-06-02. */
export type Day = string;

/** When an item comes round again, as the scheduler keeps it, with what is asked of it besides. Plain JSON. */
export type Card = {
  readonly dueAt: WallTime;
  readonly lastAt: WallTime;
  /** Days for which it is likely remembered, and how hard it is, as FSRS has them. */
  readonly stability: number;
  readonly difficulty: number;
  readonly reps: number;
  readonly lapses: number;
  readonly state: number;
  readonly scheduledDays: number;
  readonly begunOn: Day;
  readonly last: Grade;
  /** On so many different days it was right since it was last missed. */
  readonly daysRight: number;
  readonly lastOn: Day;
};

/** Of an item that is due again this share is still remembered. FSRS's own default. */
const RECALL = 0.9;
/** No item waits longer than this, days: a season ends. Common practice, no source. */
const MAX_DAYS = 90;
/** Without fuzz there is no chance in it, and without short steps an item comes once a day: at breakfast. */
const scheduler = fsrs({ request_retention: RECALL, maximum_interval: MAX_DAYS, enable_fuzz: false, enable_short_term: false });

/** Where a scheduler's time is 0 it would read the clock instead. */
const timeOf = (at: WallTime): WallTime => Math.max(1, at);

/** The card after an answer at a moment, which is a day on the site. The same card, grade and time give the same. */
export function graded(before: Card | null, grade: Grade, at: WallTime, day: Day): Card {
  const now = timeOf(before ? Math.max(at, before.lastAt) : at);
  const { card } = scheduler.next(before ? cardInput(before) : createEmptyCard(now), now, RATED[grade]);
  const isNewDay = before === null || before.lastOn !== day || before.daysRight === 0;
  return {
    dueAt: card.due.getTime(),
    lastAt: now,
    stability: card.stability,
    difficulty: card.difficulty,
    reps: card.reps,
    lapses: card.lapses,
    state: card.state,
    scheduledDays: card.scheduled_days,
    begunOn: before?.begunOn ?? day,
    last: grade,
    daysRight: grade === "right" ? (before?.daysRight ?? 0) + (isNewDay ? 1 : 0) : 0,
    lastOn: day,
  };
}

const cardInput = ({ dueAt, lastAt, stability, difficulty, reps, lapses, state, scheduledDays }: Card): CardInput => ({
  due: dueAt,
  last_review: lastAt,
  stability,
  difficulty,
  reps,
  lapses,
  state,
  elapsed_days: 0,
  scheduled_days: scheduledDays,
  learning_steps: 0,
});

/** How likely it is that an item is remembered at a moment, from 0 to 1. */
export const recall = (card: Card, at: WallTime): number =>
  scheduler.get_retrievability(cardInput(card), timeOf(Math.max(at, card.lastAt)), false);

/** What is known has at least this chance of being remembered. Common practice, no source. */
export const MIN_RECALL = 0.85;
/** It was right on so many different days since it was last missed: once may have been a guess. Common practice, no source. */
export const MIN_DAYS_RIGHT = 2;

/** How an item stands with a learner at a moment. */
export type Standing = "new" | "begun" | "known";
export function standing(card: Card | null, at: WallTime): Standing {
  if (card === null) return "new";
  return card.daysRight >= MIN_DAYS_RIGHT && recall(card, at) >= MIN_RECALL ? "known" : "begun";
}

/** A card as it lies in a file, not trusted: `null` where it is none. */
export function cardFrom(kept: unknown): Card | null {
  const numbers = ["dueAt", "lastAt", "stability", "difficulty", "reps", "lapses", "state", "scheduledDays", "daysRight"];
  if (typeof kept !== "object" || kept === null) return null;
  const card = kept as Record<string, unknown>;
  const isWhole =
    numbers.every((name) => Number.isFinite(card[name])) && typeof card.begunOn === "string" && typeof card.lastOn === "string";
  return isWhole && GRADES.some((grade) => grade === card.last) ? (kept as Card) : null;
}
