import type { TentPlan } from "../tent/types.ts";
import type { Area, SiteModel } from "./model.ts";
import { isInside, segmentsOf, sidesOf, toSegmentSq } from "./plane.ts";
import {
  type ClearanceRules,
  isShort,
  knownFt,
  type Neighbor,
  neighborsOf,
  poleTerm,
  reachTerm,
  SAME_FT,
  sumFt,
  type Term,
  thingTerms,
  wireTerms,
  zoneTerms,
} from "./rules.ts";
import { apartFt, type Outline, outlineOf, toEdgeFt } from "./shape.ts";
import { type Place, type PoleName, type StakeName, type Standing, standingAt, standingOf } from "./stand.ts";

/**
 * What a computed clearance can say. It is a screening check of what was entered: it shuts, or says nothing, and never opens a
 * gate. `notKnown`: a figure is missing, or nothing was entered.
 */
export type Verdict = "short" | "notKnown" | "notShort";

/** One distance with all that it is judged by. */
export type Clearance = {
  readonly of: StakeName | PoleName | { readonly is: "outline" };
  readonly from: Neighbor;
  readonly distanceFt: number;
  /** The sum of the terms; `null` where one is not known. */
  readonly wantedFt: number | null;
  readonly terms: readonly Term[];
  readonly verdict: Verdict;
};

/** A line, a thing or the ground, with what is too near to it, and the nearest, which the crew measures. */
export type NeighborClearances = {
  readonly from: Neighbor;
  readonly short: readonly Clearance[];
  /** With the least to spare first. */
  readonly nearest: readonly Clearance[];
};

/** What no distance here says anything about. */
export const LEFT_OUT = [
  "linesNotEntered",
  "depth",
  "widthNotMarked",
  "straightBetweenMarks",
  "wireSway",
  "heightOfWires",
  "stakeLean",
  "levelTape",
  "localLaw",
] as const;
export type LeftOut = (typeof LEFT_OUT)[number];

export type SiteClearances = {
  readonly verdict: Verdict;
  readonly neighbors: readonly NeighborClearances[];
  /** Stakes outside the area that the ticket names: the ticket is then opened again. `null`: nobody said what it names. */
  readonly leavesTicket: readonly StakeName[] | null;
  readonly leftOut: readonly LeftOut[];
};

/** How many stakes of each line the crew measures. */
const MEASURED = 3;

/** Where a tent stands and what it is judged by; and the stakes that are in no zone of a line, as an engineer's anchor takes their place there. */
type Judging = {
  readonly place: Place;
  readonly rules: ClearanceRules;
  readonly isReplaced?: (stake: StakeName, line: string) => boolean;
};

/**
 * Distances of a tent at a place to all that was entered of its site: stakes and inside ties to buried lines, poles to overhead
 * lines as if they fell toward them, ropes and cloth to what stands there and to the edge of the ground.
 */
export function clearancesOf(plan: TentPlan, site: SiteModel, { place, rules, isReplaced = () => false }: Judging): SiteClearances {
  const tent = standingAt(standingOf(plan), place);
  const outline = outlineOf(tent.outline);
  const neighbors = neighborsOf(site).map((from) => {
    const all = distancesTo(from, { tent, outline, ground: site.ground, rules, isReplaced }).sort((a, b) => a.spareFt - b.spareFt);
    // Those that are too near come first. Of thousands of distances few are told, and only those are added up.
    const end = all.findIndex(({ spareFt, distanceFt }) => spareFt > 0 && distanceFt > 0);
    const told = all.slice(0, Math.max(MEASURED, end < 0 ? all.length : end)).map((one) => judged(one, from));
    return { from, short: told.filter((one) => one.verdict === "short"), nearest: told.slice(0, MEASURED) };
  });
  return {
    verdict: worst(neighbors.flatMap(({ nearest }) => nearest.map((one) => one.verdict))),
    neighbors,
    leavesTicket: site.ticketArea && tent.stakes.filter(({ at }) => !isWellInside(at, site.ticketArea!)).map(({ name }) => name),
    leftOut: leftOutOf(site),
  };
}

type Around = Required<Pick<Judging, "rules" | "isReplaced">> & {
  readonly tent: Standing;
  readonly outline: Outline;
  readonly ground: Area | null;
};

/** What is left over of a distance; where the wanted distance is not known, what there is beyond the terms that are. */
type Distance = Pick<Clearance, "of" | "distanceFt" | "terms"> & { readonly spareFt: number };
const distance = (of: Clearance["of"], distanceFt: number, { terms, ft }: Sum): Distance => ({
  of,
  distanceFt,
  terms,
  spareFt: distanceFt - ft,
});

type Sum = { readonly terms: readonly Term[]; readonly ft: number };
const sumOf = (terms: readonly Term[]): Sum => ({ terms, ft: knownFt(terms) });

function distancesTo(from: Neighbor, { tent, outline, ground, rules, isReplaced }: Around): Distance[] {
  if (from.is === "buried") {
    const zone = zoneTerms(from.line, rules);
    const sum = oncePer((reachFt: number) => sumOf([...zone, reachTerm({ reachFt })]));
    const segments = segmentsOf(from.line.points);
    const driven = tent.stakes.filter(({ name }) => !isReplaced(name, from.line.id));
    return driven.map(({ name, at, reachFt }) => distance(name, nearestFt(at, segments), sum(reachFt)));
  }
  if (from.is === "overhead") {
    const clear = wireTerms(from.line, rules);
    const sum = oncePer((lengthFt: number) => sumOf([poleTerm({ lengthFt }), ...clear]));
    const segments = segmentsOf(from.line.points);
    return tent.poles.map(({ name, at, lengthFt }) => distance(name, nearestFt(at, segments), sum(lengthFt)));
  }
  const of = { is: "outline" } as const;
  if (from.is === "thing") return [distance(of, apartFt(outline, from.thing.shape), sumOf(thingTerms(from.thing, rules)))];
  return [distance(of, insideByFt(outline, ground!), sumOf([{ term: "entryError", ft: ground!.errorFt, source: "brief" }]))];
}

/** A sum for each length that there is: many stakes have few. */
function oncePer(sum: (ft: number) => Sum): (ft: number) => Sum {
  const known = new Map<number, Sum>();
  return (ft) => known.get(ft) ?? known.set(ft, sum(ft)).get(ft)!;
}

/** How far an outline is inside an area, ft; 0 where any of it is not. */
export function insideByFt(outline: Outline, { corners }: Pick<Area, "corners">): number {
  if (!isInside(outline.corners[0]!, corners)) return 0;
  // All of an outline is where one of its corners is, as long as no edge of the area crosses it or lies in it.
  return apartFt(outline, { is: "path", points: [...corners, corners[0]!] });
}

function judged({ of, distanceFt, terms }: Distance, from: Neighbor): Clearance {
  const one = { of, from, distanceFt, terms, wantedFt: sumFt(terms) };
  // What is nearer than the terms that are known is too near, whatever the others are.
  if (isTooNear(distanceFt, knownFt(terms))) return { ...one, verdict: "short" };
  return { ...one, verdict: one.wantedFt === null ? "notKnown" : "notShort" };
}

/** Short of what is wanted, or touching at all. */
export const isTooNear = (distanceFt: number, wantedFt: number): boolean => distanceFt <= 0 || isShort(distanceFt, wantedFt);

const nearestFt = ({ xFt, yFt }: Standing["stakes"][number]["at"], segments: ReturnType<typeof segmentsOf>): number =>
  Math.sqrt(segments.reduce((least, segment) => Math.min(least, toSegmentSq(xFt, yFt, segment)), Number.POSITIVE_INFINITY));

const isWellInside = (at: Standing["stakes"][number]["at"], { corners, errorFt }: Area): boolean => {
  const edgeFt = toEdgeFt(at, sidesOf(corners));
  return edgeFt <= SAME_FT ? errorFt === 0 : isInside(at, corners) && !isShort(edgeFt, errorFt);
};

function worst(verdicts: readonly Verdict[]): Verdict {
  if (verdicts.includes("short")) return "short";
  return verdicts.length === 0 || verdicts.includes("notKnown") ? "notKnown" : "notShort";
}

function leftOutOf({ buried, overhead }: SiteModel): LeftOut[] {
  const wires: readonly LeftOut[] = ["wireSway", "heightOfWires"];
  const unmarked = buried.some(({ widthIn }) => widthIn === null);
  return LEFT_OUT.filter((what) => (wires.includes(what) ? overhead.length > 0 : what !== "widthNotMarked" || unmarked));
}
