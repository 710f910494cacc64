import { windward } from "../site/windward.ts";
import type { EdgeName } from "../tent/types.ts";
import type { Brief } from "./brief.ts";
import type { Instant } from "./ids.ts";
import type { JobState } from "./state.ts";
import type { Step } from "./step.ts";
import { fresh } from "./weather.ts";

/** The edges that the last reading blows at; none where nobody read its direction, or took the bearing of the baseline. */
export function windwardEdges({ site: { baselineBearingDeg } }: Brief, { wind }: Pick<JobState, "wind">): readonly EdgeName[] {
  const fromDeg = wind?.fromDeg ?? null;
  return baselineBearingDeg === undefined || fromDeg === null ? [] : windward(baselineBearingDeg, fromDeg);
}

/** A call as it is said at a moment: `windward` in its params names the edges that the wind comes at, while that reading is good. */
export function callInWind(step: Step, brief: Brief, state: JobState, at: Instant): Step {
  const { wind, limits, lastAt } = state;
  if (!wind || !fresh(wind.takenAt, at, limits.windOtherwiseS, lastAt)) return step;
  const edges = windwardEdges(brief, state);
  return edges.length === 0 ? step : { ...step, params: { ...step.params, windward: edges.join(" ") } };
}
