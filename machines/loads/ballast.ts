import type { Bounds } from "../figures/bounds.ts";
import { amount } from "../figures/line.ts";
import { type FigureProblem, FigureProblems } from "../figures/problems.ts";
import { MIN_FACTOR_OF_SAFETY } from "./capacity.ts";
import type { LoadLine } from "./lines.ts";
import { ANCHOR_FACTOR } from "./sources.ts";
import { type Instead, insteadOf, type Reason } from "./verdict.ts";

export const FRICTION_BY = ["dragTest", "engineer"] as const;
/** How hard a weight is to slide on this ground. None is published for this use: it is measured by dragging, or the engineer's. */
export type Friction = { readonly coefficient: number; readonly by: (typeof FRICTION_BY)[number] };

/** One strap that ends at a weight, and how it pulls there. */
export type BallastLoad = {
  readonly tensionLbf: number;
  readonly strapDeg: number;
  readonly friction: Friction | null;
  /** `null`: 1.5. Never under that. */
  readonly factorOfSafety: number | null;
};

/** The weight that it takes, lb; `null` not known. It opens nothing: a weight may tip or sink, and the engineer says whether it does. */
export type Ballast = {
  readonly opens: "nothing";
  readonly neededLb: number | null;
  readonly reasons: readonly Reason[];
  readonly instead: readonly Instead[];
  readonly lines: readonly LoadLine[];
};

/** More than 1 is no friction of a weight on the ground. Against slips. Common practice, no source. */
const FRICTION_BOUNDS: Bounds = { from: 0.05, to: 1 };

/** What is wrong with a friction that came in. */
export function problemsOfFriction(friction: { readonly coefficient: unknown; readonly by: unknown } | null): readonly FigureProblem[] {
  const problems = new FigureProblems();
  if (friction === null) return [];
  problems.number(friction.coefficient, { field: "friction.coefficient", bounds: FRICTION_BOUNDS, unit: "number" });
  problems.choice(friction.by, "friction.by", FRICTION_BY);
  return problems.found;
}

/**
 * Weight in lb that neither slides nor lifts: what pulls it along over the friction, and what lifts it, times the factor of safety. Statics.
 *
 * @example slidingWeightLb({ sideLbf: 300, upLbf: 400, friction: 0.5, factor: 1.5 }) // 1500
 */
export const slidingWeightLb = (pull: {
  readonly sideLbf: number;
  readonly upLbf: number;
  readonly friction: number;
  readonly factor: number;
}): number => (pull.sideLbf / pull.friction + pull.upLbf) * pull.factor;

/** The weight at the end of one strap, from its tension and its angle above the ground. */
export function ballastFor({ tensionLbf, strapDeg, friction, factorOfSafety }: BallastLoad): Ballast {
  if (friction === null) {
    const reasons: readonly Reason[] = ["frictionNotKnown"];
    return { opens: "nothing", neededLb: null, reasons, instead: insteadOf(reasons), lines: [] };
  }
  const factor = Math.max(MIN_FACTOR_OF_SAFETY, factorOfSafety ?? MIN_FACTOR_OF_SAFETY);
  const angle = (strapDeg * Math.PI) / 180;
  const [sideLbf, upLbf] = [tensionLbf * Math.cos(angle), tensionLbf * Math.sin(angle)];
  const neededLb = amount(slidingWeightLb({ sideLbf, upLbf, friction: friction.coefficient, factor }), "lb");
  const line: LoadLine = {
    formula: "ballast",
    inputs: [
      { name: "drag", is: amount(sideLbf, "lbf"), source: "statics" },
      { name: "uplift", is: amount(upLbf, "lbf"), source: "statics" },
      { name: "friction", is: amount(friction.coefficient, "number"), source: friction.by === "dragTest" ? "site" : "brief" },
      { name: "factor", is: amount(factor, "number"), source: factor > MIN_FACTOR_OF_SAFETY ? "brief" : ANCHOR_FACTOR },
    ],
    result: neededLb,
    source: "statics",
    leftOut: ["tippingAndSinking", "wetFriction", "pumping"],
  };
  return { opens: "nothing", neededLb: neededLb.n, reasons: [], instead: [], lines: [line] };
}
