import type { WindCheck } from "../install/checks/wind.ts";
import type { Gate } from "../install/gates.ts";
import type { Instant } from "../install/ids.ts";
import type { Job } from "../install/job.ts";
import { AGREED, agreedMph, fresh, worstMph } from "../install/weather.ts";
import { windwardEdges } from "../install/windward-call.ts";
import type { GustLimit, WindFacts } from "./picture.ts";

const MINUTE_MS = 60_000;

/** The wind as it is held against what a gate asks, or without one against the limit for raising. */
export function windFacts({ frozen, snapshot: { context } }: Job, at: Instant, gate: Gate | null = null): WindFacts {
  const { brief, plan, limits } = frozen;
  const { wind, lastAt } = context;
  const agreed = (is: "evacuate" | "walls"): GustLimit[] => {
    const mph = agreedMph(context, AGREED[is]);
    return mph === null ? [] : [{ is, mph }];
  };
  const most: GustLimit[] = gate?.check.kind === "measure" && gate.check.to !== null ? [{ is: "most", mph: gate.check.to }] : [];
  const wanted: Pick<WindCheck, "belowMph" | "agreed"> = gate?.check.kind === "wind" ? gate.check : { belowMph: limits.raiseGustMph.is };
  const belowMph = Math.min(wanted.belowMph, agreedMph(context, wanted.agreed) ?? wanted.belowMph);
  const goodForS = (gate?.check.kind === "wind" ? gate.validForS : null) ?? limits.windOtherwiseS.is;
  const is = (): WindFacts["is"] => {
    if (!wind) return "none";
    if (worstMph(wind) >= belowMph && wind.gustMph !== null) return "over";
    if (!fresh(wind.takenAt, at, goodForS, lastAt)) return "stale";
    return wind.gustMph === null ? "noGust" : "good";
  };
  return {
    reading: wind && {
      mph: wind.mph,
      gustMph: wind.gustMph,
      fromDeg: wind.fromDeg,
      minAgo: Math.max(0, Math.floor((at - wind.takenAt) / MINUTE_MS)),
    },
    is: is(),
    belowMph,
    limits: [
      { is: "raise", mph: limits.raiseGustMph.is },
      { is: "stop", mph: limits.stopGustMph.is },
      ...agreed("evacuate"),
      ...agreed("walls"),
      ...most,
    ],
    windward: windwardEdges(brief, context),
    baselineBearingDeg: brief.site.baselineBearingDeg ?? null,
    widthFt: plan.widthFt,
    lengthFt: plan.lengthFt,
  };
}
