import type { Frozen, Step } from "../../install/step.ts";
import { LENGTHS, lengthFt } from "../../site/lengths.ts";
import type { EdgePlan, TentPlan } from "../../tent/types.ts";

/** What somebody walks to do what a call says, in feet, and whether one person has to walk all of it. */
export type Walk = { readonly feet: number; readonly isAlone: boolean };

const sum = (all: readonly number[]): number => all.reduce((a, b) => a + b, 0);
const edgesFt = (edges: readonly EdgePlan[]): number[] => edges.map((e) => e.lengthFt);
const halvesOf = ({ seams }: TentPlan) => seams.flatMap((s) => s.halves);

/** Once around along the side poles. The stake line is longer, so a true round is. */
const around = ({ edges }: TentPlan): number => sum(edgesFt(edges));
/** From corner to corner: the longest edge is left out. */
const toCorners = (plan: TentPlan): number => around(plan) - Math.max(...edgesFt(plan.edges));
/** From the first to the last station between the corners of an edge. */
function betweenCorners({ edges }: TentPlan, { params }: Step): number {
  const edge = edges.find((e) => e.name === params.edge);
  return edge ? sum(edge.baysFt.slice(1, -1)) : 0;
}
/** The five shortest of the six lengths: at least as many are taped. */
function taped(step: Step): number {
  const check = step.gate?.check;
  if (check?.kind !== "lengths") return 0;
  const lengths = LENGTHS.map((name) => lengthFt(check.want, name)).sort((a, b) => a - b);
  return sum(lengths.slice(0, -1));
}

/** Calls that send people along the tent, by the key of their words. Left out is what can be seen from where one stands. */
const CREW_WALKS: Readonly<Record<string, (plan: TentPlan, step: Step) => number>> = {
  "locate.covers": around,
  squared: (_, step) => taped(step),
  marked: around,
  "lean.outward": around,
  "count.corners": toCorners,
  "count.edge": betweenCorners,
  "straps.choked": around,
  rings: around,
  "straps.threaded": around,
  "sides.feet": around,
  "pins.both": around,
  "straps.turns": around,
  "straps.locked": around,
  plumb: around,
  "feet.onLine": around,
  "seams.gaps": (plan) => sum(halvesOf(plan).map((h) => h.lengthFt)),
  "handles.locked": around,
  "round.again": around,
  "tension.again": around,
};
/** Calls at which one person goes alone, as somebody else did it before. */
const LONE_WALKS: typeof CREW_WALKS = {
  walked: around,
  "half.looked": (plan, { params }) => halvesOf(plan).find((h) => h.id === params.half)?.lengthFt ?? 0,
};

/** The walk that a call makes somebody take, by the plan it was frozen with; `null` where it sends nobody anywhere. */
export function walkOf(step: Step, { plan }: Frozen): Walk | null {
  const [crew, alone] = [CREW_WALKS[step.wordsKey], LONE_WALKS[step.wordsKey]];
  const feet = (crew ?? alone)?.(plan, step) ?? 0;
  return feet > 0 ? { feet, isAlone: crew === undefined } : null;
}
