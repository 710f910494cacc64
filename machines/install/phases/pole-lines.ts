import type { TentPlan } from "../../tent/types.ts";
import type { Brief } from "../brief.ts";
import { INTERIOR_ORDERS } from "../brief-choices.ts";
import { onSite } from "../crew.ts";
import { COMPETENT, type GateDraft, gate } from "../gates.ts";
import type { StepDraft } from "../step.ts";

/** A line of poles that goes up, and comes down, together. */
export type Line = { readonly id: string; readonly kind: "quarters" | "center"; readonly row: string; readonly poles: readonly string[] };

/** The lines in the order that the sheet gives: quarters from one end and then the centers, or the centers first. */
export function linesOf({ sheet }: Brief, plan: TentPlan): Line[] {
  const quarters = plan.rows.flatMap((r): Line[] =>
    r.quarters.length > 0 ? [{ id: `quarters.${r.id}`, kind: "quarters", row: r.id, poles: r.quarters }] : [],
  );
  const centers = plan.rows.flatMap((r) =>
    r.centers.map((pole): Line => ({ id: `center.${pole}`, kind: "center", row: r.id, poles: [pole] })),
  );
  return (sheet?.interiorOrder ?? INTERIOR_ORDERS[0]) === "quartersFirst" ? [...quarters, ...centers] : [...centers, ...quarters];
}

export const lineParams = ({ kind, row, poles }: Line) => ({ kind, row, poles: poles.join(" "), count: poles.length });

/** One on the pole and one on its foot, or a machine's spotter and one. Common practice, no source; the sheet and the lead say more. */
export const MIN_HANDS = 2;

/**
 * How many of a crew may be under at once: whoever calls and counts them in stays out, and so does whoever counts them out; where
 * only three are there, one does both. So there is nobody for the crew of two. Common practice, no source.
 */
const mayGoUnder = (crew: Brief["crew"]): number => {
  const here = onSite(crew).length;
  return Math.max(here - 2, Math.min(here - 1, MIN_HANDS));
};

/** Those who go under, counted one by one: over once it was answered, and never asked again. */
export const countIn = ({ crew }: Brief): GateDraft =>
  gate({ kind: "count", from: MIN_HANDS, to: mayGoUnder(crew) }, { roles: COMPETENT, past: true });

/** The same number, counted out by somebody else. */
export const countOut = (into: string): GateDraft =>
  gate({ kind: "sameCount", as: into }, { roles: COMPETENT, secondPersonTo: into, past: true });

/** Where going on starts again after a lift or a lowering that was left: at its count of those who go under. */
export const asOne = (into: string, calls: readonly StepDraft[]): StepDraft[] => calls.map((c) => ({ ...c, resumeFrom: into }));
