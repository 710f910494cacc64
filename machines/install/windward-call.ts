import { windward } from "../site/windward.ts";
import type { EdgeName } from "../tent/types.ts";
import type { Brief } from "./brief.ts";
import type { Wind } from "./state.ts";
import type { Step } from "./step.ts";

/** The edges that the wind comes at; none where nobody read its direction, or took the bearing of the baseline. */
export function windwardEdges({ site: { baselineBearingDeg } }: Brief, wind: Wind | null): readonly EdgeName[] {
  const fromDeg = wind?.fromDeg ?? null;
  return baselineBearingDeg === undefined || fromDeg === null ? [] : windward(baselineBearingDeg, fromDeg);
}

/** A call as it is said in this wind: with the edges that the wind comes at, for those calls where it matters. */
export function callInWind(step: Step, brief: Brief, wind: Wind | null): Step {
  const edges = windwardEdges(brief, wind);
  return edges.length === 0 ? step : { ...step, params: { ...step.params, windward: edges.join(" ") } };
}
