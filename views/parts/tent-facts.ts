import type { KitItem, TentPlan } from "../../machines/tent/types.ts";
import { feetInches } from "../text/en/names.ts";
import { record } from "../text/en/record.ts";
import { type Glance, tents } from "../text/en/tents.ts";

/** What is seen of a tent at a glance: every figure is counted in its plan. */
export function glanceOf(plan: TentPlan): Glance {
  const { onePiece, splitEnds } = plan.spec;
  const poles = (kind: "center" | "quarter") => plan.poles.filter((p) => p.kind === kind).length;
  return {
    size: record.size(plan.widthFt, plan.lengthFt),
    ends: onePiece ? tents.ends.onePiece : splitEnds ? tents.ends.split : tents.ends.whole,
    stations: plan.stations.length,
    stakes: plan.stations.reduce((n, s) => n + s.stakes, 0),
    poles: tents.poles(poles("center"), poles("quarter")),
  };
}

/** The same and more as rows of a table. */
export function factsOf(plan: TentPlan): [string, string][] {
  const { size, ends, stations, stakes, poles } = glanceOf(plan);
  const { fact } = tents;
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
    [fact.diagonal, feetInches(plan.diagonalFt)],
  ];
}

/** What an example is called: its size and what it comes in. */
export function exampleName(plan: TentPlan): string {
  const { ends } = glanceOf(plan);
  return tents.exampleName(plan.widthFt, plan.lengthFt, plan.spec.quarterRings === 2 ? `${ends}, ${tents.twoRings}` : ends);
}
