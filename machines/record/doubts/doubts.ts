import { type Entries, type EntryLookup, lookupIn } from "../entries.ts";
import type { CommandEntry, Opening } from "../entry.ts";
import { type Course, openCourse } from "./course.ts";
import { DOUBT_KINDS, type Doubt, type DoubtKind } from "./doubt.ts";
import { type RefusedState, refusalsEnded } from "./refused-before-answer.ts";
import { watchOf } from "./registry.ts";
import { saidBy } from "./said.ts";

/** Version of the rules. A state of another version is made again from the entries. */
export const DOUBTS_VERSION = 4;

/** The doubts of a record so far, and what is kept to go on from there. Plain JSON, small, derived from the entries alone. */
export type DoubtState = {
  /** As opened: nothing is at stake, and nothing is looked at. */
  readonly rehearsal: boolean;
  readonly course: Course;
  readonly kept: Readonly<Record<DoubtKind, unknown>>;
};

const eachKind = (of: (kind: DoubtKind) => unknown): DoubtState["kept"] =>
  Object.fromEntries(DOUBT_KINDS.map((kind) => [kind, of(kind)])) as DoubtState["kept"];

/** The state of the opening entry alone. */
export const openDoubts = (opening: Opening): DoubtState => ({
  rehearsal: opening.opened.brief.rehearsal === true,
  course: openCourse(opening),
  kept: eachKind((kind) => watchOf(kind).open),
});

/** The state with one more entry. `earlier` looks up the entries before it. */
export function addDoubts(state: DoubtState, entry: CommandEntry, earlier: EntryLookup): DoubtState {
  if (state.rehearsal) return state;
  const said = saidBy(state.course, entry, earlier);
  return { ...state, course: said.after, kept: eachKind((kind) => watchOf(kind).add(state.kept[kind], said)) };
}

/** Gates that were answered between two states, with how often "next" had been refused there before: once is told too. */
export const answeredAfterRefusals = (before: DoubtState, after: DoubtState) =>
  refusalsEnded(before.kept.refusedBeforeAnswer as RefusedState, after.kept.refusedBeforeAnswer as RefusedState);

/** The doubts that a state has come to: by kind, in the order of `DOUBT_KINDS`, each kind in the order of the record. */
export const doubtsOf = (state: DoubtState): readonly Doubt[] => DOUBT_KINDS.flatMap((kind) => watchOf(kind).doubts(state.kept[kind]));

/**
 * What a manager should look at in a whole record. No rehearsal has any. Throws if the first entry is not an opening, or another
 * one is.
 */
export function doubtsIn(entries: Entries): readonly Doubt[] {
  const [first, ...rest] = entries;
  if (first?.entry.kind !== "opening") throw new Error("the record does not begin with an opening; give all entries from the first");
  const earlier: EntryLookup = lookupIn(entries);
  let state = openDoubts(first.entry);
  for (const { entry } of rest) {
    if (entry.kind !== "command") throw new Error(`entry ${entry.no} opens the job again; a record has one opening`);
    state = addDoubts(state, entry, earlier);
  }
  return doubtsOf(state);
}
