import { PHASES } from "../../../machines/install/step.ts";
import { MAKING_SAFE } from "../../../machines/record/doubts/doubt.ts";
import { FOLLOW_UP_STATES } from "../../../machines/record/follow-up.ts";
import { FINDING_KINDS, type FindingKind } from "../../../machines/record/oversight/finding.ts";
import type { Measure } from "../../../machines/record/oversight/measure.ts";
import { spreadOf } from "../../../machines/record/oversight/spread.ts";
import type { Words } from "../../text/words.ts";
import { placeName } from "../record/lines.ts";
import { cardOf, type Found } from "./card-state.ts";
import type { Choice, FindingsState, Looked, PhaseCount, PhaseSpread, RefusalCount } from "./state.ts";

type Tally = { readonly kind: FindingKind; readonly phase: string; readonly count: number };
type MeasureTally = Pick<Measure, "what" | "name" | "n"> & { readonly count: number };

/** What is left of all jobs by what is looked for, and what there is of tents in all. */
export type Left = {
  readonly looked: Looked;
  readonly tallies: readonly Tally[];
  readonly measures: readonly MeasureTally[];
  readonly sizes: readonly MeasureTally[];
  readonly found: readonly Found[];
  readonly before: string | null;
  readonly next: string | null;
};

/** Where a finding can begin, in the order of a raise. */
const PLACES = [...PHASES, MAKING_SAFE, "closed"] as const;
/** How refusals are put together: one by one while they are few. */
const REFUSALS: readonly (readonly [number, number | null])[] = [
  [1, 1],
  [2, 2],
  [3, 3],
  [4, 4],
  [5, 9],
  [10, null],
];

export function buildFindings({ looked, tallies, measures, sizes, found, before, next }: Left, words: Words): FindingsState {
  return {
    looked,
    choices: choicesFrom(sizes, words),
    found: sum(tallies),
    jobs: sum(measures.filter(({ what }) => what === "job")),
    kinds: FINDING_KINDS.flatMap((kind) => {
      const count = sum(tallies.filter((tally) => tally.kind === kind));
      return count === 0 ? [] : [{ kind, title: words.findingTitle(kind), count }];
    }),
    phases: PLACES.flatMap((phase): PhaseCount[] => {
      const count = sum(tallies.filter((tally) => tally.phase === phase));
      return count === 0 ? [] : [{ phase, name: placeName(phase, words), count }];
    }),
    times: PLACES.flatMap((phase): PhaseSpread[] => {
      const spread = spreadOf(measures.filter(({ what, name }) => what === "time" && name === phase));
      return spread ? [{ phase, name: placeName(phase, words), jobs: spread.count, ...spread }] : [];
    }),
    refusals: refusalsFrom(measures.filter(({ what }) => what === "refusals")),
    cards: found.map((one) => cardOf(one, words)),
    before,
    next,
  };
}

const sum = (counts: readonly { readonly count: number }[]): number => counts.reduce((all, { count }) => all + count, 0);

function refusalsFrom(counts: readonly MeasureTally[]): RefusalCount[] {
  if (counts.length === 0) return [];
  return REFUSALS.map(([from, to]) => ({
    from,
    to,
    answers: sum(counts.filter(({ n }) => n >= from && (to === null || n <= to))),
  }));
}

function choicesFrom(sizes: readonly MeasureTally[], words: Words): FindingsState["choices"] {
  const tents = sizes.filter(({ what }) => what === "job").map(({ name }) => ({ value: name, feet: name.split("x").map(Number) }));
  tents.sort((a, b) => a.feet[0]! - b.feet[0]! || a.feet[1]! - b.feet[1]!);
  return {
    tent: tents.map(({ value, feet: [wide = 0, long = 0] }): Choice => ({ value, text: words.page.size(wide, long) })),
    phase: PLACES.map((phase) => ({ value: phase, text: placeName(phase, words) })),
    kind: FINDING_KINDS.map((kind) => ({ value: kind, text: words.findingTitle(kind) })),
    state: FOLLOW_UP_STATES.map((state) => ({ value: state, text: words.findings.stateIs(state) })),
  };
}
