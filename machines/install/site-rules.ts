import type { OverheadLine } from "../site/model.ts";
import type { ClearanceRules } from "../site/rules.ts";
import { type Limits, MIN_TOLERANCE_IN } from "./limits.ts";
import { OVERHEAD, overheadClearanceFt } from "./published-limits.ts";

/**
 * What a site's clearances are judged by: the job's limits, and the published clearance of each overhead line by its voltage.
 *
 * @example clearanceRules({ toleranceIn: { is: 24, source: "brief" }, separationFt: { is: 20, source: "brief" } }, [{ id: "street", kv: 7.2 }]).overheadFt // { street: 10 }
 */
export const clearanceRules = (
  { toleranceIn, separationFt }: Pick<Limits, "toleranceIn" | "separationFt">,
  overhead: readonly Pick<OverheadLine, "id" | "kv">[],
): ClearanceRules => ({
  toleranceIn,
  minToleranceIn: MIN_TOLERANCE_IN,
  overheadFt: Object.fromEntries(overhead.map(({ id, kv }) => [id, overheadClearanceFt(kv)])),
  overheadSource: OVERHEAD,
  separationFt,
});
