import { ballastFor } from "../loads/ballast.ts";
import type { LoadLine } from "../loads/lines.ts";
import type { PlateScreened, StationScreened } from "../loads/screening.ts";
import { strapDegOf } from "../loads/strap.ts";
import { type Instead, insteadOf, type Reason } from "../loads/verdict.ts";
import { distanceFt } from "../tent/grid.ts";
import type { TentPlan } from "../tent/types.ts";
import { reasonsOfLoad, screenedOf } from "./anchor-screening.ts";
import type { Brief } from "./brief.ts";

/** The weight at the end of each strap, whole pounds rounded up, that the worst of them needs; and how many straps there are. */
export type Weights = {
  readonly is: "known";
  readonly eachLb: number;
  readonly straps: number;
  /** All of them together, lb. */
  readonly lb: number;
  /** The strap that needs most: its station, and which of its plates, from 1. */
  readonly at: { readonly station: string; readonly plate: number };
  /** How the weight of that strap is worked out. */
  readonly lines: readonly LoadLine[];
};
/** Weights are used and nobody can say how heavy they have to be: why, and what to do. */
export type WeightsNotKnown = { readonly is: "notKnown"; readonly reasons: readonly Reason[]; readonly instead: readonly Instead[] };

/** The weights of a job that uses them; `null` where nobody told a friction, as then none is used. They open nothing. */
export function ballastOf(brief: Pick<Brief, "anchorage" | "sheet" | "use">, plan: TentPlan): Weights | WeightsNotKnown | null {
  const { friction, factorOfSafety = null } = brief.anchorage ?? {};
  const screened = friction && screenedOf(brief, plan);
  if (!screened) return null;
  const needed = screened.screening.stations.flatMap((station) =>
    station.plates.flatMap((plate) => {
      const tensionLbf = tensionOf(plate);
      if (tensionLbf === null) return [];
      const strapDeg = strapDegAt(station, plate, plan);
      const { neededLb, lines } = ballastFor({ tensionLbf, strapDeg, friction, factorOfSafety });
      return neededLb === null ? [] : [{ neededLb, lines, at: { station: station.station, plate: plate.plate } }];
    }),
  );
  const [first, ...rest] = needed;
  if (!screened.isLoadKnown || !first) return notKnown(screened.screening.reasons);
  const worst = rest.reduce((most, one) => (one.neededLb > most.neededLb ? one : most), first);
  const eachLb = Math.ceil(worst.neededLb - 1e-6);
  const straps = plan.plates.length;
  return { is: "known", eachLb, straps, lb: eachLb * straps, at: worst.at, lines: worst.lines };
}

function notKnown(all: readonly Reason[]): WeightsNotKnown {
  const reasons = reasonsOfLoad(all);
  return { is: "notKnown", reasons, instead: insteadOf(reasons) };
}

/** Of the whole strap: a weight at its end has all of it to hold, however many stakes the plan has there. */
const tensionOf = ({ lines }: PlateScreened): number | null => lines.find(({ formula }) => formula === "strapTension")?.result.n ?? null;

function strapDegAt({ station }: StationScreened, { plate }: PlateScreened, { stations, plates, spec }: TentPlan): number {
  const own = plates.filter((p) => p.station === station)[plate - 1]!;
  return strapDegOf({ sidePoleFt: spec.sidePoleFt, outFt: distanceFt(stations.find((s) => s.id === station)!, own) });
}
