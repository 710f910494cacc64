import type { KitItem, TentPlan } from "../../machines/tent/types.ts";
import type { Glance } from "../pages/tents/state.ts";
import type { Words } from "../text/words.ts";

/** What is seen of a tent at a glance: every figure is counted in its plan. */
export function glanceOf(plan: TentPlan, { page, tents }: Words): Glance {
  const { onePiece, splitEnds } = plan.spec;
  const poles = (kind: "center" | "quarter") => plan.poles.filter((p) => p.kind === kind).length;
  return {
    size: page.size(plan.widthFt, plan.lengthFt),
    ends: onePiece ? tents.ends.onePiece : splitEnds ? tents.ends.split : tents.ends.whole,
    stations: plan.stations.length,
    stakes: plan.stations.reduce((n, s) => n + s.stakes, 0),
    poles: tents.poles(poles("center"), poles("quarter")),
  };
}

/** The same and more as rows of a table. */
export function factsOf(plan: TentPlan, words: Words): [string, string][] {
  const { size, ends, stations, stakes, poles } = glanceOf(plan, words);
  const { fact } = words.tents;
  const kit = (item: KitItem) => plan.kit.find((k) => k.item === item)?.count ?? 0;
  return [
    [fact.size, size],
    [fact.ends, ends],
    [fact.pieces, String(plan.pieces.length)],
    [fact.seams, String(plan.seams.length)],
    [fact.stations, String(stations)],
    [fact.stakes, String(stakes)],
    [fact.poles, poles],
    [fact.sidePoles, String(kit("sidePole") + kit("cornerPole"))],
    [fact.diagonal, words.feetInches(plan.diagonalFt)],
  ];
}

/** What an example is called: its size and what it comes in. */
export function exampleName(plan: TentPlan, words: Words): string {
  const { tents } = words;
  const { ends } = glanceOf(plan, words);
  return tents.exampleName(plan.widthFt, plan.lengthFt, plan.spec.quarterRings === 2 ? `${ends}, ${tents.twoRings}` : ends);
}
