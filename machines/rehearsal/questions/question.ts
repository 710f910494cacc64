import type { Role } from "../../install/brief.ts";
import type { Unit } from "../../install/gates.ts";
import type { Frozen, PhaseId, Step } from "../../install/step.ts";
import type { Point } from "../../tent/types.ts";
import type { Seeded } from "../seeded.ts";
import type { RefusalKind } from "./refusal-kind.ts";

/** What a question is about: a family of skills that are asked in the same way. */
export const KINDS = [
  "next",
  "seam",
  "count",
  "before",
  "refused",
  "size",
  "order",
  "place",
  "limit",
  "who",
  "age",
  "reopens",
  "resume",
] as const;
export type Kind = (typeof KINDS)[number];

/** A call or a condition, as far as its words go. */
export type Worded = Pick<Step, "wordsKey" | "params">;

/** What is counted. */
export type Counted = "stakes" | "plates" | "stations" | "straps" | "poles" | "sidePoles" | "pieces" | "exits" | "turns" | "runs";

/** What an option shows, as data: `views/text` has the words. */
export type Shown =
  | { readonly is: "piece"; readonly id: string }
  /** Which piece brings the loops, and which the holes. */
  | { readonly is: "laced"; readonly lace: string; readonly eyelet: string }
  | { readonly is: "count"; readonly n: number; readonly of: Counted }
  | { readonly is: "figure"; readonly n: number; readonly unit: Unit }
  | { readonly is: "time"; readonly s: number }
  /** What is said at a call, or its question alone. */
  | ({ readonly is: "call" | "asked" } & Worded)
  | { readonly is: "refusal"; readonly why: RefusalKind }
  | { readonly is: "roles"; readonly roles: readonly Role[] }
  | { readonly is: "phase"; readonly id: PhaseId }
  | { readonly is: "half"; readonly id: string }
  /** A place on the plan, by where it is: its name would be the answer. */
  | ({ readonly is: "place" } & Point);

/** Options have ids that say nothing: their places, from 1. */
export type Option = { readonly id: string; readonly shown: Shown };

/**
 * A question about one job. `right` are ids of options: the one that is right, or all of them in their order where `kind` is
 * "order". `ask` names its words, which `params` fill in, and `about` is a call that stands beside it. `because` is the call
 * whose own why and wrong tell the reason.
 */
export type Question = {
  readonly item: string;
  readonly phase: PhaseId;
  readonly kind: Kind;
  readonly ask: string;
  readonly params: Readonly<Record<string, string | number>>;
  readonly about: Worded | null;
  readonly options: readonly Option[];
  readonly right: readonly string[];
  readonly because: Worded | null;
};

/** What a maker says of a question; its item is where it stands in the catalog. */
export type Made = Omit<Question, "item" | "phase" | "kind" | "about" | "params"> & Partial<Pick<Question, "about" | "params">>;
/** Makes a question of one skill for a job; `null` where the job has nothing to ask it about. */
export type Maker = (frozen: Frozen, random: Seeded) => Made | null;
/** The skills of a kind, by their items, each in the phase in which it is needed. */
export type Skills = Readonly<Record<string, readonly [phase: PhaseId, make: Maker]>>;

/** So many wrong ones stand beside the right one, and so many at least. */
const MAX_WRONG = 3;
const MIN_WRONG = 2;

/** Whether two options show the same. Of what is asked, the same words count, and a wind by its limit too: many sound alike wherever they are asked. */
export const isSame = (a: Shown, b: Shown): boolean =>
  a.is === "asked" && b.is === "asked"
    ? a.wordsKey === b.wordsKey && a.params.belowMph === b.params.belowMph
    : JSON.stringify(a) === JSON.stringify(b);

type Choice = Pick<Question, "options" | "right">;

/**
 * The right answer among what slips give; `null` where too few are left. `alsoRight` are never among the wrong ones. The
 * slips that are named first are the likelier ones, and are taken first.
 */
export function choice(random: Seeded, right: Shown, slips: readonly Shown[], alsoRight: readonly Shown[] = []): Choice | null {
  const wrong: Shown[] = [];
  for (const slip of slips)
    if (wrong.length < MAX_WRONG && ![right, ...alsoRight, ...wrong].some((other) => isSame(slip, other))) wrong.push(slip);
  if (wrong.length < MIN_WRONG) return null;
  return optionsOf(random, [right, ...wrong], [right]);
}

/** Things to be put in their order, shown in another one. */
export function inOrder(random: Seeded, right: readonly Shown[]): Choice {
  const mixed = random.shuffle(right);
  const shown = mixed.every((is, i) => isSame(is, right[i]!)) ? [...mixed.slice(1), mixed[0]!] : mixed;
  return numbered(shown, right);
}

const optionsOf = (random: Seeded, all: readonly Shown[], right: readonly Shown[]): Choice => numbered(random.shuffle(all), right);

function numbered(shown: readonly Shown[], right: readonly Shown[]): Choice {
  const options = shown.map((is, i) => ({ id: String(i + 1), shown: is }));
  return { options, right: right.map((is) => options.find((option) => isSame(option.shown, is))!.id) };
}

/** Numbers that are not the right one: what slips give first, then those beside it. None below 1. */
export function countSlips(right: number, slips: readonly number[], of: Counted): Shown[] {
  const near = [right + 1, right - 1, right + 2, right * 2];
  return [...slips, ...near].filter((n) => n > 0).map((n) => ({ is: "count", n, of }));
}

/** A call as far as its words go. */
export const worded = ({ wordsKey, params }: Worded): Worded => ({ wordsKey, params });
