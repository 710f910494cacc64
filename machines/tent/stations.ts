import { anchorsAt } from "./anchors.ts";
import { distanceFt, toGrid } from "./grid.ts";
import type { Corner, EdgeName, EdgePlan, Point, Seam, Station, StationKind, TentSpec } from "./types.ts";

/**
 * The stations of the perimeter, clockwise from corner A, and the plan of each edge. Corners and seam ends are always
 * stations; between them the edge is divided into even bays no longer than the pole spacing. Numbers run clockwise along
 * an edge, seam ends counted in: AB1, AB2 … Common practice, no source.
 */
export function stationsOf(spec: TentSpec, seams: readonly Seam[]): { stations: Station[]; edges: EdgePlan[] } {
  const edges = edgesOf(spec).map((edge) => {
    const places = placesOf(spec, edge, seams);
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

/** How many even bays of at most `spacingFt` a stretch of an edge is divided into. */
export const baysIn = (stretchFt: number, spacingFt: number): number => Math.max(1, Math.ceil(stretchFt / spacingFt - 1e-6));

type Place = { readonly kind: StationKind; readonly alongFt: number };

/** The corner that an edge starts at and all that follows, without the corner that it ends at. */
function placesOf(spec: TentSpec, edge: Edge, seams: readonly Seam[]): Place[] {
  const fixed: Place[] = [
    { kind: "corner", alongFt: 0 },
    ...seamEndsFt(edge, seams).map((alongFt): Place => ({ kind: "seamEnd", alongFt })),
  ];
  const stretchesFt = fixed.map(({ alongFt }, i) => (fixed[i + 1]?.alongFt ?? edge.clothFt) - alongFt);
  const bays = baysOf(stretchesFt, spec.spacingFt, spec.rings?.[edge.name]);
  return fixed.flatMap((place, i): Place[] => {
    const sides = Array.from({ length: bays[i]! - 1 }, (_, n): Place => {
      return { kind: "side", alongFt: toGrid(place.alongFt + (stretchesFt[i]! * (n + 1)) / bays[i]!) };
    });
    return [place, ...sides];
  });
}

/** Bays of each stretch. Where rings were counted, a bay more goes to the stretch with the widest, one fewer to the one with the narrowest. */
function baysOf(stretchesFt: readonly number[], spacingFt: number, rings: number | undefined): number[] {
  const bays = stretchesFt.map((ft) => baysIn(ft, spacingFt));
  if (rings === undefined) return bays;
  const widthOf = (i: number, more: number) => stretchesFt[i]! / (bays[i]! + more);
  const all = () => bays.reduce((a, b) => a + b, 0);
  const first = (better: (i: number, than: number) => boolean, open: (i: number) => boolean) =>
    bays.reduce((best, _, i) => (open(i) && (best < 0 || better(i, best)) ? i : best), -1);
  while (all() < rings - 1)
    bays[
      first(
        (i, than) => widthOf(i, 0) > widthOf(than, 0) + 1e-9,
        () => true,
      )
    ]!++;
  while (all() > rings - 1) {
    const i = first(
      (a, than) => widthOf(a, -1) < widthOf(than, -1) - 1e-9,
      (a) => bays[a]! > 1,
    );
    if (i < 0) break;
    bays[i]!--;
  }
  return bays;
}

/** Lengths in feet between the fixed stations of each edge, along the cloth: what counted rings have to fit into. */
export const stretchesOf = (spec: Pick<TentSpec, "widthFt" | "lengthFt">, seams: readonly Seam[]): Record<EdgeName, number[]> =>
  Object.fromEntries(
    edgesOf(spec).map((edge) => {
      const marks = [0, ...seamEndsFt(edge, seams), edge.clothFt];
      return [edge.name, marks.slice(1).map((ft, i) => ft - marks[i]!)];
    }),
  ) as Record<EdgeName, number[]>;

const seamEndsFt = (edge: Edge, seams: readonly Seam[]): number[] =>
  seams
    .flatMap((s) => (s.kind === "cross" ? [s.from, s.to] : [s.to]))
    .filter((p) => edge.holds(p))
    .map((p) => edge.along(p))
    .sort((a, b) => a - b);

type Edge = {
  readonly name: EdgeName;
  /** Length of the cloth's edge; the marks on the ground stand `lengthFt` apart. */
  readonly clothFt: number;
  readonly lengthFt: number;
  /** On the ground: the cloth's edge laid from corner mark to corner mark. */
  readonly at: (alongFt: number) => Point;
  readonly along: (p: Point) => number;
  readonly holds: (p: Point) => boolean;
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
    { name: "AB", ...between(a, b, l), along: (p) => p.yFt, holds: (p) => p.xFt === 0 },
    { name: "BC", ...between(b, c, w), along: (p) => p.xFt, holds: (p) => p.yFt === l },
    { name: "CD", ...between(c, d, l), along: (p) => toGrid(l - p.yFt), holds: (p) => p.xFt === w },
    { name: "DA", ...between(d, a, w), along: (p) => toGrid(w - p.xFt), holds: (p) => p.yFt === 0 },
  ];
}
