import { planTent } from "../../machines/tent/plan.ts";
import { checkSpec } from "../../machines/tent/spec.ts";
import type { SpecInput } from "../../machines/tent/spec-input.ts";
import type { SpecProblem, TentPlan, TentSpec } from "../../machines/tent/types.ts";

/** 80×100 ft, split ends, one mid of 20 ft. */
export const eighty: SpecInput = {
  widthFt: 80,
  lengthFt: 100,
  midsFt: [20],
  splitEnds: true,
  spacingFt: 10,
  quarterRings: 1,
  centerPoleFt: 25,
};
/** 60×120 ft, split ends, two mids of 30 ft. */
export const sixty: SpecInput = { ...eighty, widthFt: 60, lengthFt: 120, midsFt: [30, 30] };
/** 20×20 ft in one piece. */
export const twenty: SpecInput = { widthFt: 20, lengthFt: 20, onePiece: true, spacingFt: 10, quarterRings: 0, centerPoleFt: 13 };
/** 40×80 ft, whole ends, no quarter poles. */
export const forty: SpecInput = { widthFt: 40, lengthFt: 80, midsFt: [20, 20], spacingFt: 10, quarterRings: 0, centerPoleFt: 17 };
/** 100×200 ft, split ends, two rings of quarter poles. */
export const hundred: SpecInput = {
  ...eighty,
  widthFt: 100,
  lengthFt: 200,
  midsFt: [20, 20, 20, 20, 20],
  quarterRings: 2,
  centerPoleFt: 30,
};

export function specOf(input: SpecInput): TentSpec {
  const checked = checkSpec(input);
  if ("problems" in checked) throw new Error(JSON.stringify(checked.problems));
  return checked.spec;
}

export const planOf = (input: SpecInput): TentPlan => planTent(specOf(input));

/** The problems of a tent. Accepts any value, as an outside caller might send. */
export function problemsOf(input: unknown): readonly SpecProblem[] {
  const checked = checkSpec(input as SpecInput);
  return "problems" in checked ? checked.problems : [];
}

export const kitCount = (plan: TentPlan, item: string): number => plan.kit.find((k) => k.item === item)?.count ?? 0;
