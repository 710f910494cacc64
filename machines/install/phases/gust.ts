import { COMPETENT, gate } from "../gates.ts";
import type { Limits } from "../limits.ts";
import type { StepDraft } from "../step.ts";

/** The wind, read in the open, fresh and workable: before anything goes up, comes down, or goes on again. */
export const gust = (id: string, { raiseGustMph, stopGustMph, windLiftingS }: Limits): StepDraft => ({
  id,
  wordsKey: "gust",
  params: { raiseGustMph: raiseGustMph.is, stopGustMph: stopGustMph.is },
  gate: gate({ kind: "wind" }, { source: raiseGustMph.source, roles: COMPETENT, validForS: windLiftingS.is, reopenedBy: ["sheet"] }),
});
