import { ballastFor } from "../loads/ballast.ts";
import { strapDegOf } from "../loads/strap.ts";
import { distanceFt } from "../tent/grid.ts";
import type { TentPlan } from "../tent/types.ts";
import { screenedOf } from "./anchor-screening.ts";
import type { Brief } from "./brief.ts";

/** The weight at the end of each strap, whole pounds rounded up, that the worst of them needs; and how many straps there are. */
export type Weights = { readonly eachLb: number; readonly straps: number };

/** The weights of a job that uses them; `null` where nobody told a friction, or no load can be worked out. They open nothing. */
export function ballastOf(brief: Pick<Brief, "anchorage" | "sheet" | "use">, plan: TentPlan): Weights | null {
  const { friction = null, factorOfSafety = null } = brief.anchorage ?? {};
  const screened = friction && screenedOf(brief, plan);
  if (!screened?.isLoadKnown) return null;
  const needed = screened.screening.stations.flatMap(({ station, plates }) =>
    plates.flatMap(({ plate, demandLbf, stakesCounted }) => {
      const own = plan.plates.filter((p) => p.station === station)[plate - 1]!;
      const outFt = distanceFt(plan.stations.find((s) => s.id === station)!, own);
      const strapDeg = strapDegOf({ sidePoleFt: plan.spec.sidePoleFt, outFt });
      const { neededLb } = ballastFor({ tensionLbf: (demandLbf ?? 0) * stakesCounted, strapDeg, friction, factorOfSafety });
      return neededLb === null ? [] : [neededLb];
    }),
  );
  return needed.length === 0 ? null : { eachLb: Math.ceil(Math.max(...needed) - 1e-6), straps: plan.plates.length };
}
