import { anchorsAt } from "./anchors.ts";
import { toGrid } from "./grid.ts";
import type { EdgeName, EdgePlan, Point, Seam, Station, StationKind, TentSpec } from "./types.ts";

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
      const marksFt = [...places.map((p) => p.alongFt), edge.lengthFt];
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
  const ends = seams
    .flatMap((s) => (s.kind === "cross" ? [s.from, s.to] : [s.to]))
    .filter((p) => edge.holds(p))
    .map((p): Place => ({ kind: "seamEnd", alongFt: edge.along(p) }))
    .sort((a, b) => a.alongFt - b.alongFt);
  const fixed: Place[] = [{ kind: "corner", alongFt: 0 }, ...ends];
  return fixed.flatMap((place, i): Place[] => {
    const stretchFt = (fixed[i + 1]?.alongFt ?? edge.lengthFt) - place.alongFt;
    const bays = baysIn(stretchFt, spec.spacingFt);
    const sides = Array.from({ length: bays - 1 }, (_, n): Place => {
      return { kind: "side", alongFt: toGrid(place.alongFt + (stretchFt * (n + 1)) / bays) };
    });
    return [place, ...sides];
  });
}

type Edge = {
  readonly name: EdgeName;
  readonly lengthFt: number;
  readonly at: (alongFt: number) => Point;
  readonly along: (p: Point) => number;
  readonly holds: (p: Point) => boolean;
};

function edgesOf({ widthFt: w, lengthFt: l }: TentSpec): Edge[] {
  return [
    { name: "AB", lengthFt: l, at: (ft) => ({ xFt: 0, yFt: ft }), along: (p) => p.yFt, holds: (p) => p.xFt === 0 },
    { name: "BC", lengthFt: w, at: (ft) => ({ xFt: ft, yFt: l }), along: (p) => p.xFt, holds: (p) => p.yFt === l },
    { name: "CD", lengthFt: l, at: (ft) => ({ xFt: w, yFt: toGrid(l - ft) }), along: (p) => toGrid(l - p.yFt), holds: (p) => p.xFt === w },
    { name: "DA", lengthFt: w, at: (ft) => ({ xFt: toGrid(w - ft), yFt: 0 }), along: (p) => toGrid(w - p.xFt), holds: (p) => p.yFt === 0 },
  ];
}
