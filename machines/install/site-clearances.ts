import { clearancesOf, type SiteClearances } from "../site/clearances.ts";
import type { SiteModel } from "../site/model.ts";
import { type Place, placeByCornerA, type StakeName, turning } from "../site/stand.ts";
import { toGrid } from "../tent/grid.ts";
import type { Point, TentPlan } from "../tent/types.ts";
import type { Limits } from "./limits.ts";
import { clearanceRules } from "./site-rules.ts";

/** Where a tent stands on its site. Where no place is wanted, the site's baseline is the tent's A–B and begins at corner A. */
export const placeOf = (plan: Pick<TentPlan, "widthFt" | "lengthFt">, { wanted }: Pick<SiteModel, "wanted">): Place =>
  placeByCornerA(plan, wanted?.cornerA ?? { xFt: 0, yFt: 0 }, wanted?.headingDeg ?? 0);

/** Where the mark of a station goes on the site, ft. */
export function pointOf(plan: TentPlan, id: string, { middle, headingDeg }: Place): Point {
  const { xFt, yFt } = plan.stations.find((station) => station.id === id)!;
  const by = turning(headingDeg)({ xFt: xFt - plan.widthFt / 2, yFt: yFt - plan.lengthFt / 2 });
  return { xFt: toGrid(middle.xFt + by.xFt), yFt: toGrid(middle.yFt + by.yFt) };
}

/**
 * Every distance of a tent where it stands, by the limits of its job. A stake that an engineer's anchor takes the place of is in
 * no zone: its own calls ask for the line exposed by hand and for the paper.
 */
export function siteClearances(plan: TentPlan, site: SiteModel, limits: Judging, place: Place = placeOf(plan, site)): SiteClearances {
  const { toleranceIn, separationFt } = limits;
  const { middle, headingDeg } = place;
  const by: By = [toleranceIn, separationFt, headingDeg, middle.xFt, middle.yFt];
  const ofPlan = known.get(plan) ?? new WeakMap<SiteModel, Known>();
  known.set(plan, ofPlan);
  const lately = ofPlan.get(site);
  if (lately?.by.every((one, n) => one === by[n])) return lately.clearances;
  const clearances = workedOut(plan, site, { limits, place });
  ofPlan.set(site, { by, clearances });
  return clearances;
}

type Judging = Pick<Limits, "toleranceIn" | "separationFt">;
type By = readonly [Judging["toleranceIn"], Judging["separationFt"], headingDeg: number, xFt: number, yFt: number];
type Known = { readonly by: By; readonly clearances: SiteClearances };

/** What was worked out last of a plan on a site: every page of a site asks for it, and a big site takes a while. */
const known = new WeakMap<TentPlan, WeakMap<SiteModel, Known>>();

function workedOut(plan: TentPlan, site: SiteModel, { limits, place }: { limits: Judging; place: Place }): SiteClearances {
  // Dug ground holds no anchor either, whatever is said to be exposed there.
  const dug = new Set(site.buried.flatMap(({ id, kind }) => (kind === "excavation" ? [id] : [])));
  const replaced = new Set(
    (site.fixes ?? []).flatMap((fix) =>
      fix.is === "engineeredAnchor" ? fix.expose.filter((line) => !dug.has(line)).map((line) => keyOf(fix.stake, line)) : [],
    ),
  );
  const isReplaced = (stake: StakeName, line: string) => replaced.has(keyOf(stake, line));
  return clearancesOf(plan, site, { place, rules: clearanceRules(limits, site.overhead), isReplaced });
}

/** A stake and a line that it stands near, as one text, however a record has sorted their fields. */
const keyOf = (stake: StakeName, line: string): string =>
  JSON.stringify(stake.is === "plate" ? [stake.station, stake.plate, line] : [stake.pole, line]);
