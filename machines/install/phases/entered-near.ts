import type { SiteClearances } from "../../site/clearances.ts";
import type { BuriedKind } from "../../site/model.ts";
import type { TentPlan } from "../../tent/types.ts";
import { nearestOf } from "../shortfalls.ts";
import type { StepDraft } from "../step.ts";

/**
 * Of the buried lines that were entered of some kinds: whether there is any, the stakes that the crew measures, what the tape has to
 * say there, in, and the widest zone of their own, in; 0 where none has one.
 */
export type EnteredNear = {
  readonly any: boolean;
  readonly params: NonNullable<StepDraft["params"]>;
  readonly neededIn: number;
  readonly ownZoneIn: number;
};

/** The buried lines of a site by what of them stands nearest to a stake. The crew measures it all the same. */
export function enteredNear(worked: SiteClearances | null, plan: TentPlan): { of: (is: (kind: BuriedKind) => boolean) => EnteredNear } {
  const neighbors = worked?.neighbors ?? [];
  const of = (is: (kind: BuriedKind) => boolean): EnteredNear => {
    const lines = neighbors.flatMap((one) => (one.from.is === "buried" && is(one.from.line.kind) ? [{ line: one.from.line, ...nearestOf(one, plan) }] : [])); // biome-ignore format: one line reads best
    const [nearest] = lines.toSorted((a, b) => a.distanceIn - b.distanceIn);
    if (!nearest) return { any: false, params: {}, neededIn: 0, ownZoneIn: 0 };
    return {
      any: true,
      params: { kind: nearest.line.kind, stakes: nearest.of.join(" "), computedIn: nearest.distanceIn },
      neededIn: Math.max(...lines.map(({ neededIn }) => neededIn)),
      ownZoneIn: Math.max(...lines.map(({ line }) => line.toleranceIn ?? 0)),
    };
  };
  return { of };
}
