import type { Sheet } from "../brief.ts";
import { COMPETENT, gate, PRACTICE, SHEET } from "../gates.ts";
import { WIND_GOOD_S, windLimits } from "../limits.ts";
import type { Call } from "../step.ts";

/** The wind, read in the open, fresh and workable: before anything goes up, comes down, or goes on again. */
export const gust = (id: string, sheet: Sheet): Call => ({
  id,
  call: "gust",
  of: windLimits(sheet),
  gate: gate(
    { kind: "wind" },
    { source: sheet.raiseGustMph === null ? PRACTICE : SHEET, who: COMPETENT, goodForS: WIND_GOOD_S.raising, reopenedBy: ["sheet"] },
  ),
});
