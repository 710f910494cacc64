import { toGrid } from "./grid.ts";
import type { AnchorCount, Corner, EdgeName, Point, StakePlate, Station, StationKind, TentSpec } from "./types.ts";

/**
 * Fewest plates and stakes planned for each kind of station; the tent's sheet overrides it. Each plate takes one ratchet
 * strap. Common practice, no source.
 */
const PLANNING_MINIMUM: Readonly<Record<StationKind, AnchorCount>> = {
  corner: { plates: 3, stakes: 6 },
  seamEnd: { plates: 2, stakes: 4 },
  side: { plates: 1, stakes: 2 },
};

/** Spacing of side-by-side plates at one station, in feet. Common practice, no source. */
const PLATE_GAP_FT = 2;

/**
 * Plates and stakes at a station of this kind: the sheet's numbers, or the planning minimum.
 *
 * @example anchorsAt(spec, "seamEnd") // { plates: 2, stakes: 4 }
 */
export const anchorsAt = (spec: TentSpec, kind: StationKind): AnchorCount => spec.anchors[kind] ?? PLANNING_MINIMUM[kind];

/**
 * Lays out the stake plates on the stake line. At a corner they are spaced evenly around the corner of the stake line, from
 * square to one edge to square to the other; the middle one of three is on the diagonal. Elsewhere they sit side by side,
 * square to the edge. Stakes are split evenly, with any extra going to the first plates. Common practice, no source.
 *
 * @example platesOf(spec, plan.stations)[1] // { station: "A", stakes: 2, xFt: -6, yFt: -6, bearingDeg: 225 }
 */
export function platesOf(spec: TentSpec, stations: readonly Station[]): StakePlate[] {
  return stations.flatMap((station) =>
    Array.from({ length: station.plates }, (_, i): StakePlate => {
      const stakes = Math.floor(station.stakes / station.plates) + (i < station.stakes % station.plates ? 1 : 0);
      const by = station.kind === "corner" ? plateAroundCorner(station, i, spec.setbackFt) : plateAlongEdge(station, i, spec.setbackFt);
      return { station: station.id, stakes, ...by };
    }),
  );
}

type EdgeDirections = { readonly out: Point; readonly along: Point };

/** Unit vectors: out of the tent, and clockwise along the edge. */
const EDGE_DIRECTIONS: Readonly<Record<EdgeName, EdgeDirections>> = {
  AB: { out: { xFt: -1, yFt: 0 }, along: { xFt: 0, yFt: 1 } },
  BC: { out: { xFt: 0, yFt: 1 }, along: { xFt: 1, yFt: 0 } },
  CD: { out: { xFt: 1, yFt: 0 }, along: { xFt: 0, yFt: -1 } },
  DA: { out: { xFt: 0, yFt: -1 }, along: { xFt: -1, yFt: 0 } },
};
const PREVIOUS_EDGE: Readonly<Record<Corner, EdgeName>> = { A: "DA", B: "AB", C: "BC", D: "CD" };

function plateAlongEdge(station: Station, i: number, setbackFt: number) {
  const { out, along } = EDGE_DIRECTIONS[station.edge];
  const asideFt = (i - (station.plates - 1) / 2) * PLATE_GAP_FT;
  return { ...offsetFrom(station, out, setbackFt, along, asideFt), bearingDeg: bearingDeg(out) };
}

function plateAroundCorner(corner: Station, i: number, setbackFt: number) {
  const first = EDGE_DIRECTIONS[PREVIOUS_EDGE[corner.id as Corner]].out;
  const second = EDGE_DIRECTIONS[corner.edge].out;
  const walkedFt = corner.plates === 1 ? setbackFt : (2 * setbackFt * i) / (corner.plates - 1);
  const place = offsetFrom(corner, first, Math.min(setbackFt, 2 * setbackFt - walkedFt), second, Math.min(setbackFt, walkedFt));
  return { ...place, bearingDeg: bearingDeg({ xFt: place.xFt - corner.xFt, yFt: place.yFt - corner.yFt }) };
}

const offsetFrom = (start: Point, a: Point, aFt: number, b: Point, bFt: number): Point => ({
  xFt: toGrid(start.xFt + a.xFt * aFt + b.xFt * bFt),
  yFt: toGrid(start.yFt + a.yFt * aFt + b.yFt * bFt),
});

const bearingDeg = ({ xFt, yFt }: Point): number => toGrid((Math.atan2(xFt, yFt) * 180) / Math.PI + 360) % 360;
