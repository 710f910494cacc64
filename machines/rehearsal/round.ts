import type { WallTime } from "../install/ids.ts";
import type { Item } from "./questions/items.ts";
import type { Card, Day, Grade } from "./repetition.ts";
import { seeded } from "./seeded.ts";

/** A round is five minutes, or so many questions; so many of them at first, the rest are left for what is missed. Common practice, no source. */
export const ROUND_MS = 5 * 60_000;
export const MAX_QUESTIONS = 12;
export const MAX_FIRST = 9;
/** Not more than so many new items a day: all of them come round again. Common practice, no source. */
export const MAX_NEW_A_DAY = 8;

/** One question of a round, and what was answered: ids of options. */
export type Asked = { readonly item: string; readonly given: readonly string[] | null; readonly grade: Grade | null };
/** The questions of a round in order, the day it was begun on, and the number that draws them. */
export type Round = { readonly seed: number; readonly day: Day; readonly at: WallTime; readonly asked: readonly Asked[] };

/** Which items a round asks: those that are due, the longest due first, then new ones in the order of the job. */
export function itemsOfRound(items: readonly Item[], cards: ReadonlyMap<string, Card>, at: WallTime, day: Day): string[] {
  const due = items.filter(({ id }) => (cards.get(id)?.dueAt ?? Number.POSITIVE_INFINITY) <= at).sort((a, b) => cards.get(a.id)!.dueAt - cards.get(b.id)!.dueAt); // biome-ignore format: one line reads best
  const begunToday = [...cards.values()].filter((card) => card.begunOn === day).length;
  const fresh = items.filter(({ id }) => !cards.has(id)).slice(0, Math.max(0, MAX_NEW_A_DAY - begunToday));
  return [...due, ...fresh].slice(0, MAX_FIRST).map(({ id }) => id);
}

/** A round as it begins; `seed` draws its questions. */
export const roundOf = (items: readonly string[], seed: number, at: WallTime, day: Day): Round => ({
  seed,
  day,
  at,
  asked: items.map((item) => ({ item, given: null, grade: null })),
});

/** The seed of one question of a round. */
export const seedOf = ({ seed }: Pick<Round, "seed">, no: number): number => seeded(seed, "round", String(no)).int(0, 2 ** 31 - 1);

/** When a round is over, whatever was asked. */
export const endOf = ({ at }: Round): WallTime => at + ROUND_MS;

/** The question that comes next, by its number from 0; `null` once all were answered. */
export const nextOf = ({ asked }: Round): number | null => {
  const no = asked.findIndex(({ given }) => given === null);
  return no < 0 ? null : no;
};

/** The round after an answer, and its grade. What was missed is asked once more at the end, where there is room. */
export function answered(
  round: Round,
  no: number,
  given: readonly string[],
  right: boolean,
): { readonly round: Round; readonly grade: Grade } {
  const { item } = round.asked[no]!;
  const wasMissed = round.asked.slice(0, no).some((before) => before.item === item && before.grade === "missed");
  const grade: Grade = right ? (wasMissed ? "afterMiss" : "right") : "missed";
  const asked = round.asked.map((one, i) => (i === no ? { item, given, grade } : one));
  const again = grade === "missed" && asked.length < MAX_QUESTIONS ? [{ item, given: null, grade: null }] : [];
  return { round: { ...round, asked: [...asked, ...again] }, grade };
}

/** A round as it lies in a file, not trusted: `null` where it is none. */
export function roundFrom(kept: unknown): Round | null {
  if (typeof kept !== "object" || kept === null) return null;
  const { seed, day, at, asked } = kept as Record<string, unknown>;
  const isWhole = Number.isFinite(seed) && typeof day === "string" && Number.isFinite(at) && Array.isArray(asked);
  return isWhole ? (kept as Round) : null;
}
