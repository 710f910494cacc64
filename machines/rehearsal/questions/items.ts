import { type Frozen, PHASES, type PhaseId } from "../../install/step.ts";
import { own } from "../../lookup/own.ts";
import { seeded } from "../seeded.ts";
import { AGES } from "./ages.ts";
import { BEFORE } from "./before.ts";
import { COUNTS } from "./counts.ts";
import { LIMITS } from "./limits.ts";
import { PLACES } from "./places.ts";
import type { Kind, Question, Skills } from "./question.ts";
import { REFUSED } from "./refused.ts";
import { REOPENS } from "./reopens.ts";
import { RESUMES } from "./resume.ts";
import { SEAMS } from "./seam.ts";
import { NEXT, ORDERS } from "./sequence.ts";
import { SIZES } from "./size.ts";
import { WHO } from "./who.ts";

const SKILLS: Readonly<Record<Kind, Skills>> = {
  next: NEXT,
  seam: SEAMS,
  count: COUNTS,
  before: BEFORE,
  refused: REFUSED,
  size: SIZES,
  order: ORDERS,
  place: PLACES,
  limit: LIMITS,
  who: WHO,
  age: AGES,
  reopens: REOPENS,
  resume: RESUMES,
};

/** A skill that is asked again and again, each time of another place, call or figure. Its name stays the same over tents. */
export type Item = { readonly id: string; readonly phase: PhaseId; readonly kind: Kind };

/** Every item, in the order of the phases. */
export const ITEMS: readonly Item[] = Object.entries(SKILLS)
  .flatMap(([kind, skills]) => Object.entries(skills).map(([id, [phase]]): Item => ({ id, phase, kind: kind as Kind })))
  .sort((a, b) => PHASES.indexOf(a.phase) - PHASES.indexOf(b.phase));

const byId: Readonly<Record<string, Item>> = Object.fromEntries(ITEMS.map((item) => [item.id, item]));

/** Tried with as many draws of a seed, and then of the first one: a tent may have a skill, and nothing to ask at one of its places. */
const DRAWS = 3;
const FIRST_SEED = 0;

/** The question of an item for a job: the same for the same seed. `null` where this job has nothing to ask it about, or there is no such item. */
export function questionFor(frozen: Frozen, id: string, seed: number): Question | null {
  const item = own(byId, id);
  if (!item) return null;
  const [, make] = SKILLS[item.kind][id]!;
  for (const from of [seed, FIRST_SEED])
    for (let draw = 0; draw < DRAWS; draw++) {
      const made = make(frozen, seeded(from, "question", id, String(draw)));
      if (made) return { about: null, params: {}, ...made, item: id, phase: item.phase, kind: item.kind };
    }
  return null;
}

const known = new WeakMap<Frozen, readonly Item[]>();
/** The items that can be asked about a job. Looked for once a job. */
export function askable(frozen: Frozen): readonly Item[] {
  const before = known.get(frozen);
  if (before) return before;
  const made = ITEMS.filter(({ id }) => questionFor(frozen, id, FIRST_SEED) !== null);
  known.set(frozen, made);
  return made;
}

/** Whether an answer, its options' ids in order, is right. */
export const isRight = ({ right }: Question, given: readonly string[]): boolean =>
  given.length === right.length && given.every((id, i) => id === right[i]);
