import { anchorsAt } from "./anchors.ts";
import { distanceFt, toGrid } from "./grid.ts";
import type { Corner, EdgeName, EdgePlan, Point, Seam, Station, StationKind, TentSpec } from "./types.ts";

/**
 * The stations around the perimeter, clockwise from corner A, and a summary of each edge. Corners and seam ends are always
 * stations; between them each stretch is divided into equal bays no longer than the pole spacing. Stations are numbered
 * clockwise along their edge, seam ends included: AB1, AB2 … Common practice, no source.
 *
 * @example stationsOf(spec, plan.seams).stations.slice(0, 3).map((station) => station.id) // ["A", "AB1", "AB2"]
 */
export function stationsOf(spec: TentSpec, seams: readonly Seam[]): { stations: Station[]; edges: EdgePlan[] } {
  const edges = edgesOf(spec).map((edge) => {
    const places = stationMarks(spec, edge, seams);
    const stations = places.map(({ kind, alongFt }, i): Station => {
      const id = i === 0 ? edge.name[0]! : `${edge.name}${i}`;
      return { id, kind, edge: edge.name, ...edge.at(alongFt), ...anchorsAt(spec, kind) };
    });
    return { edge, places, stations };
  });
  return {
    stations: edges.flatMap((e) => e.stations),
    edges: edges.map(({ edge, places, stations }): EdgePlan => {
      const between = stations.slice(1);
      const marksFt = [...places.map((p) => p.alongFt), edge.clothFt].map((ft) => (ft * edge.lengthFt) / edge.clothFt);
      return {
        name: edge.name,
        lengthFt: edge.lengthFt,
        rings: between.length + 2,
        between: between.map((s) => s.id),
        seamEnds: between.filter((s) => s.kind === "seamEnd").length,
        sides: between.filter((s) => s.kind === "side").length,
        baysFt: marksFt.slice(1).map((ft, i) => toGrid(ft - marksFt[i]!)),
      };
    }),
  };
}

/**
 * Number of equal bays, each at most `spacingFt` long, that a stretch of an edge is divided into.
 *
 * @example bayCount(45, 10) // 5
 */
export const bayCount = (stretchFt: number, spacingFt: number): number => Math.max(1, Math.ceil(stretchFt / spacingFt - 1e-6));

type StationMark = { readonly kind: StationKind; readonly alongFt: number };

/** The stations of an edge from its first corner up to, but not including, its last corner. */
function stationMarks(spec: TentSpec, edge: Edge, seams: readonly Seam[]): StationMark[] {
  const fixed: StationMark[] = [
    { kind: "corner", alongFt: 0 },
    ...seamEndsFt(edge, seams).map((alongFt): StationMark => ({ kind: "seamEnd", alongFt })),
  ];
  const stretchesFt = fixed.map(({ alongFt }, i) => (fixed[i + 1]?.alongFt ?? edge.clothFt) - alongFt);
  const bays = allocateBays(stretchesFt, spec.spacingFt, spec.rings?.[edge.name]);
  return fixed.flatMap((place, i): StationMark[] => {
    const sides = Array.from({ length: bays[i]! - 1 }, (_, n): StationMark => {
      return { kind: "side", alongFt: toGrid(place.alongFt + (stretchesFt[i]! * (n + 1)) / bays[i]!) };
    });
    return [place, ...sides];
  });
}

/** Bays in each stretch. To match a counted number of rings, adds bays where they are widest or removes them where narrowest. */
function allocateBays(stretchesFt: readonly number[], spacingFt: number, rings: number | undefined): number[] {
  const bays = stretchesFt.map((ft) => bayCount(ft, spacingFt));
  if (rings === undefined) return bays;
  const bayFt = (i: number, extraBays: number) => stretchesFt[i]! / (bays[i]! + extraBays);
  const total = () => bays.reduce((a, b) => a + b, 0);
  const bestIndex = (isBetter: (i: number, best: number) => boolean, isAllowed: (i: number) => boolean) =>
    bays.reduce((best, _, i) => (isAllowed(i) && (best < 0 || isBetter(i, best)) ? i : best), -1);
  while (total() < rings - 1)
    bays[
      bestIndex(
        (i, best) => bayFt(i, 0) > bayFt(best, 0) + 1e-9,
        () => true,
      )
    ]!++;
  while (total() > rings - 1) {
    const i = bestIndex(
      (i, best) => bayFt(i, -1) < bayFt(best, -1) - 1e-9,
      (i) => bays[i]! > 1,
    );
    if (i < 0) break;
    bays[i]!--;
  }
  return bays;
}

/**
 * Lengths in feet between the fixed stations (corners and seam ends) of each edge, along the cloth. Counted rings have to fit
 * into these.
 *
 * @example stretchesBetweenFixed(spec, plan.seams).BC // [40, 40]
 */
export const stretchesBetweenFixed = (spec: Pick<TentSpec, "widthFt" | "lengthFt">, seams: readonly Seam[]): Record<EdgeName, number[]> =>
  Object.fromEntries(
    edgesOf(spec).map((edge) => {
      const marks = [0, ...seamEndsFt(edge, seams), edge.clothFt];
      return [edge.name, marks.slice(1).map((ft, i) => ft - marks[i]!)];
    }),
  ) as Record<EdgeName, number[]>;

const seamEndsFt = (edge: Edge, seams: readonly Seam[]): number[] =>
  seams
    .flatMap((s) => (s.kind === "cross" ? [s.from, s.to] : [s.to]))
    .filter((p) => edge.contains(p))
    .map((p) => edge.along(p))
    .sort((a, b) => a - b);

type Edge = {
  readonly name: EdgeName;
  /** Length of the edge of the cloth; the corner marks on the ground are `lengthFt` apart. */
  readonly clothFt: number;
  readonly lengthFt: number;
  /** Point on the ground for a distance along the cloth, with the edge laid from corner mark to corner mark. */
  readonly at: (alongFt: number) => Point;
  readonly along: (p: Point) => number;
  readonly contains: (p: Point) => boolean;
};

function edgesOf({ widthFt: w, lengthFt: l, shifted }: Pick<TentSpec, "widthFt" | "lengthFt" | "shifted">): Edge[] {
  const mark = (corner: Corner, xFt: number, yFt: number): Point => ({
    xFt: xFt + (shifted?.[corner]?.xFt ?? 0),
    yFt: yFt + (shifted?.[corner]?.yFt ?? 0),
  });
  const [a, b, c, d] = [mark("A", 0, 0), mark("B", 0, l), mark("C", w, l), mark("D", w, 0)];
  const between = (from: Point, to: Point, clothFt: number) => ({
    clothFt,
    lengthFt: distanceFt(from, to),
    at: (ft: number): Point => ({
      xFt: toGrid(from.xFt + ((to.xFt - from.xFt) * ft) / clothFt),
      yFt: toGrid(from.yFt + ((to.yFt - from.yFt) * ft) / clothFt),
    }),
  });
  return [
    { name: "AB", ...between(a, b, l), along: (p) => p.yFt, contains: (p) => p.xFt === 0 },
    { name: "BC", ...between(b, c, w), along: (p) => p.xFt, contains: (p) => p.yFt === l },
    { name: "CD", ...between(c, d, l), along: (p) => toGrid(l - p.yFt), contains: (p) => p.xFt === w },
    { name: "DA", ...between(d, a, w), along: (p) => toGrid(w - p.xFt), contains: (p) => p.yFt === 0 },
  ];
}
