import type { Sheet } from "../brief.ts";
import { COMPETENT, gate, PRACTICE, SHEET } from "../gates.ts";
import { WIND_VALID_S, windLimits } from "../limits.ts";
import type { StepDraft } from "../step.ts";

/** The wind, read in the open, fresh and workable: before anything goes up, comes down, or goes on again. */
export const gust = (id: string, sheet: Sheet): StepDraft => ({
  id,
  wordsKey: "gust",
  params: windLimits(sheet),
  gate: gate(
    { kind: "wind" },
    { source: sheet.raiseGustMph === null ? PRACTICE : SHEET, roles: COMPETENT, validForS: WIND_VALID_S.raising, reopenedBy: ["sheet"] },
  ),
});
