import { EDGES, type EdgeName, type Point, type Station, type TentPlan } from "../tent/types.ts";
import type { BuriedLine, SiteModel } from "./model.ts";
import { segmentsOf, toSegmentSq } from "./plane.ts";
import { type ClearanceRules, isShort, knownFt, zoneTerms } from "./rules.ts";
import type { StakeFix } from "./stake-fix.ts";
import { type Place, type Stakes, standingAt, standingOf, turning } from "./stand.ts";

export type { StakeFix } from "./stake-fix.ts";

/** Steps of a slide, and the least gap to the next station, ft: side by side plates are 2 ft apart. Common practice, no source. */
const STEP_FT = 0.5;
const MIN_GAP_FT = 2;

/**
 * What can be done about each stake that stands in a zone, edge by edge clockwise, then about the inside ties. Only side stations
 * slide: corners and seam ends are where the cloth has them.
 */
export function fixesAt(plan: TentPlan, site: SiteModel, { place, rules }: { place: Place; rules: ClearanceRules }): StakeFix[] {
  const { stakes } = standingAt(standingOf(plan), place);
  const linesIn = linesAround(site, rules);
  const inZone = stakes.filter((s) => linesIn(s, NOT_MOVED).length > 0);
  // In ground that was dug nothing holds: neither a stake nor an anchor is offered there.
  const replaced = (s: Stakes): StakeFix[] => {
    const lines = linesIn(s, NOT_MOVED);
    const isDug = lines.some(({ kind }) => kind === "excavation");
    return isDug ? [] : [{ is: "engineeredAnchor", stake: s.name, expose: lines.map(({ id }) => id) }];
  };
  const ofStation = (all: readonly Stakes[], id: string) => all.filter(({ name }) => name.is === "plate" && name.station === id);
  const perimeter = EDGES.flatMap((edge): StakeFix[] => {
    const row = rowOf(plan, edge, place.headingDeg);
    return plan.stations
      .filter((station) => station.edge === edge)
      .flatMap((station): StakeFix[] => {
        const bad = ofStation(inZone, station.id);
        if (bad.length === 0) return [];
        const own = ofStation(stakes, station.id);
        const byFt = slides(row, station, plan.spec.spacingFt).find((ft) =>
          own.every((s) => linesIn(s, { xFt: row.along.xFt * ft, yFt: row.along.yFt * ft }).length === 0),
        );
        if (byFt === undefined) return bad.flatMap(replaced);
        row.atFt.set(station.id, row.atFt.get(station.id)! + byFt);
        return [{ is: "slide", station: station.id, byFt, stakes: own.map(({ name }) => name) }];
      });
  });
  return [...perimeter, ...inZone.filter(({ name }) => name.is === "tie").flatMap(replaced)];
}

const NOT_MOVED: Point = { xFt: 0, yFt: 0 };

/** The stations of an edge by how far along it they are, its last corner among them; those that slid are sorted in where they stand now. */
type Row = { readonly along: Point; readonly atFt: Map<string, number> };

function rowOf({ stations }: TentPlan, edge: EdgeName, headingDeg: number): Row {
  const last = stations.find(({ id }) => id === edge[1])!;
  const here = [...stations.filter((s) => s.edge === edge), last];
  const first = here[0]!;
  const lengthFt = Math.sqrt((last.xFt - first.xFt) ** 2 + (last.yFt - first.yFt) ** 2);
  const unit = { xFt: (last.xFt - first.xFt) / lengthFt, yFt: (last.yFt - first.yFt) / lengthFt };
  const atFt = new Map(here.map((s) => [s.id, (s.xFt - first.xFt) * unit.xFt + (s.yFt - first.yFt) * unit.yFt]));
  return { along: turning(headingDeg)(unit), atFt };
}

/** The stations of some slides whose plates would come too near to the next ones or too far from them, or that do not slide at all. */
export function badSlides(plan: TentPlan, slides: ReadonlyMap<string, number>): string[] {
  const rows = EDGES.map((edge) => rowOf(plan, edge, 0));
  for (const { atFt } of rows) for (const [id, ft] of slides) if (atFt.has(id)) atFt.set(id, atFt.get(id)! + ft);
  return [...slides.keys()].filter((id) => {
    const station = plan.stations.find((s) => s.id === id);
    const row = rows.find(({ atFt }) => atFt.has(id));
    if (!row || station?.kind !== "side") return true;
    const places = [...row.atFt.entries()].sort(([, a], [, b]) => a - b);
    const i = places.findIndex(([other]) => other === id);
    const gapsFt = [i - 1, i].map((at) => (places[at + 1]?.[1] ?? Number.NaN) - (places[at]?.[1] ?? Number.NaN));
    return !gapsFt.every((gapFt) => isGap(gapFt, plan.spec.spacingFt));
  });
}

/** Whether two stations may stand so far apart, ft. */
const isGap = (gapFt: number, spacingFt: number): boolean => !isShort(gapFt, MIN_GAP_FT) && !isShort(spacingFt, gapFt);

/** How far a station may slide, the shortest first and clockwise before the other way; nothing where it is a corner or a seam end. */
function slides({ atFt }: Row, { id, kind }: Station, spacingFt: number): number[] {
  if (kind !== "side") return [];
  const places = [...atFt.entries()].sort(([, a], [, b]) => a - b);
  const i = places.findIndex(([other]) => other === id);
  const [before, here, after] = [places[i - 1]![1], places[i]![1], places[i + 1]![1]];
  const steps = Array.from({ length: Math.floor(spacingFt / STEP_FT) }, (_, n) => (n + 1) * STEP_FT);
  const fits = (gapFt: number) => isGap(gapFt, spacingFt);
  return steps.flatMap((ft) => [ft, -ft]).filter((ft) => fits(here + ft - before) && fits(after - here - ft));
}

/** The buried lines in whose zones the stakes of a plate or tie come to stand, moved by some feet. */
function linesAround({ buried }: SiteModel, rules: ClearanceRules): (stakes: Stakes, by: Point) => BuriedLine[] {
  const zones = buried.map((line) => ({ line, segments: segmentsOf(line.points), radiusFt: knownFt(zoneTerms(line, rules)) }));
  return ({ at, reachFt }, by) =>
    zones
      .filter(({ segments, radiusFt }) =>
        segments.some((segment) => isShort(Math.sqrt(toSegmentSq(at.xFt + by.xFt, at.yFt + by.yFt, segment)), radiusFt + reachFt)),
      )
      .map(({ line }) => line);
}
