import { EDGES, type EdgeName, type Point, type Station, type TentPlan } from "../tent/types.ts";
import type { BuriedLine, SiteModel } from "./model.ts";
import { segmentsOf, toSegmentSq } from "./plane.ts";
import { type ClearanceRules, isShort, knownFt, zoneTerms } from "./rules.ts";
import { type Place, type StakeName, type Stakes, standingAt, standingOf, turning } from "./stand.ts";

/**
 * What can be done about a stake in a zone. To dig there by hand and drive it is none: a stake in dug ground holds nothing.
 * Each is a question to the sheet or the engineer, and opens no gate.
 */
export type StakeFix =
  /** All plates of a station slide along its edge, clockwise, under 0 the other way; no gap gets wider than the sheet's spacing. */
  | { readonly is: "slide"; readonly station: string; readonly byFt: number; readonly stakes: readonly StakeName[] }
  /** An anchor that an engineer names in place of this stake, after the lines were exposed by hand. */
  | { readonly is: "engineeredAnchor"; readonly stake: StakeName; readonly expose: readonly string[] };

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
  const replaced = (s: Stakes): StakeFix => {
    const expose = linesIn(s, NOT_MOVED).flatMap(({ id, kind }) => (kind === "excavation" ? [] : [id]));
    return { is: "engineeredAnchor", stake: s.name, expose };
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
        if (byFt === undefined) return bad.map(replaced);
        row.atFt.set(station.id, row.atFt.get(station.id)! + byFt);
        return [{ is: "slide", station: station.id, byFt, stakes: own.map(({ name }) => name) }];
      });
  });
  return [...perimeter, ...inZone.filter(({ name }) => name.is === "tie").map(replaced)];
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

/** How far a station may slide, the shortest first and clockwise before the other way; nothing where it is a corner or a seam end. */
function slides({ atFt }: Row, { id, kind }: Station, spacingFt: number): number[] {
  if (kind !== "side") return [];
  const places = [...atFt.entries()].sort(([, a], [, b]) => a - b);
  const i = places.findIndex(([other]) => other === id);
  const [before, here, after] = [places[i - 1]![1], places[i]![1], places[i + 1]![1]];
  const steps = Array.from({ length: Math.floor(spacingFt / STEP_FT) }, (_, n) => (n + 1) * STEP_FT);
  const fits = (gapFt: number) => !isShort(gapFt, MIN_GAP_FT) && !isShort(spacingFt, gapFt);
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
