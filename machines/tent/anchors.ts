import { toGrid } from "./grid.ts";
import type { AnchorCount, Corner, EdgeName, Point, StakePlate, Station, StationKind, TentSpec } from "./types.ts";

/**
 * Planning minimum at each kind of station; the numbers of the tent's sheet replace it. A plate takes one ratchet strap.
 * Common practice, no source.
 */
const MINIMUM: Readonly<Record<StationKind, AnchorCount>> = {
  corner: { plates: 3, stakes: 6 },
  seamEnd: { plates: 2, stakes: 4 },
  side: { plates: 1, stakes: 2 },
};

/** Between plates side by side at one station, in feet. Common practice, no source. */
const PLATE_GAP_FT = 2;

/** Plates and stakes at a station of this kind: the sheet's numbers, or the planning minimum. */
export const anchorsAt = (spec: TentSpec, kind: StationKind): AnchorCount => spec.anchors[kind] ?? MINIMUM[kind];

/**
 * Where the stake plates lie, on the stake line. Corner: from square to the one edge, round the corner of the stake
 * line, to square to the other, evenly; with three plates the middle one is on the diagonal. Elsewhere: side by side,
 * square to the edge. The stakes are shared out evenly, odd ones to the first plates. Common practice, no source.
 */
export function platesOf(spec: TentSpec, stations: readonly Station[]): StakePlate[] {
  return stations.flatMap((station) =>
    Array.from({ length: station.plates }, (_, i): StakePlate => {
      const stakes = Math.floor(station.stakes / station.plates) + (i < station.stakes % station.plates ? 1 : 0);
      const by = station.kind === "corner" ? aroundCorner(station, i, spec.setbackFt) : besideEdge(station, i, spec.setbackFt);
      return { station: station.id, stakes, ...by };
    }),
  );
}

type Way = { readonly out: Point; readonly along: Point };

/** Outward, and along the edge clockwise. */
const WAYS: Readonly<Record<EdgeName, Way>> = {
  AB: { out: { xFt: -1, yFt: 0 }, along: { xFt: 0, yFt: 1 } },
  BC: { out: { xFt: 0, yFt: 1 }, along: { xFt: 1, yFt: 0 } },
  CD: { out: { xFt: 1, yFt: 0 }, along: { xFt: 0, yFt: -1 } },
  DA: { out: { xFt: 0, yFt: -1 }, along: { xFt: -1, yFt: 0 } },
};
const EDGE_BEFORE: Readonly<Record<Corner, EdgeName>> = { A: "DA", B: "AB", C: "BC", D: "CD" };

function besideEdge(station: Station, i: number, setbackFt: number) {
  const { out, along } = WAYS[station.edge];
  const asideFt = (i - (station.plates - 1) / 2) * PLATE_GAP_FT;
  return { ...from(station, out, setbackFt, along, asideFt), bearingDeg: bearingDeg(out) };
}

function aroundCorner(corner: Station, i: number, setbackFt: number) {
  const first = WAYS[EDGE_BEFORE[corner.id as Corner]].out;
  const second = WAYS[corner.edge].out;
  const walkedFt = corner.plates === 1 ? setbackFt : (2 * setbackFt * i) / (corner.plates - 1);
  const place = from(corner, first, Math.min(setbackFt, 2 * setbackFt - walkedFt), second, Math.min(setbackFt, walkedFt));
  return { ...place, bearingDeg: bearingDeg({ xFt: place.xFt - corner.xFt, yFt: place.yFt - corner.yFt }) };
}

const from = (start: Point, a: Point, aFt: number, b: Point, bFt: number): Point => ({
  xFt: toGrid(start.xFt + a.xFt * aFt + b.xFt * bFt),
  yFt: toGrid(start.yFt + a.yFt * aFt + b.yFt * bFt),
});

const bearingDeg = ({ xFt, yFt }: Point): number => toGrid((Math.atan2(xFt, yFt) * 180) / Math.PI + 360) % 360;
