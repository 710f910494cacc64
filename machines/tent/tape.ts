import { distanceFt, nearlyEqual, toGrid } from "./grid.ts";
import { type Corner, EDGES, type EdgeName, type Point, type StakePlate, type Station, type StationKind, type TentPlan } from "./types.ts";

/** A tape reading in feet, measured from the start of the tape and back from its end. */
export type TapeReading = { readonly readingFt: number; readonly backFt: number };

/** The marks of one edge on one tape, from its first corner to its last, inclusive. */
export type EdgeTape = {
  readonly edge: EdgeName;
  readonly from: Corner;
  readonly to: Corner;
  readonly lengthFt: number;
  readonly marks: readonly (TapeReading & { readonly station: string; readonly kind: StationKind })[];
};

/** A plate on the tape along the stake line. `asideFt` is its offset outside the tape: 0 unless a corner was shifted. */
export type PlateMark = TapeReading & {
  readonly station: string;
  /** Number of the plate at its station, clockwise from 1. */
  readonly plate: number;
  /** None where an engineer's anchor is set instead. */
  readonly stakes: number;
  readonly bearingDeg: number;
  readonly asideFt: number;
};

/**
 * The stake line outside one edge, on one tape from stake-line corner to stake-line corner. Those corners, `start` and `end`,
 * are offset from the tent's corners by the setback, square to both edges there. Coordinates are those of the plan.
 */
export type StakeLine = {
  readonly edge: EdgeName;
  readonly from: Corner;
  readonly to: Corner;
  readonly start: Point;
  readonly end: Point;
  readonly lengthFt: number;
  readonly setbackFt: number;
  readonly marks: readonly PlateMark[];
};

/**
 * Running tape readings for every edge, clockwise from A. Each is measured from the first corner, not bay by bay, so that
 * errors do not add up. Positions come from the plan, including shifted corners and counted rings.
 *
 * @example edgeTapes(plan)[1].marks.map((mark) => mark.readingFt) // [0, 10, 20, 30, 40, 50, 60, 70, 80]
 */
export const edgeTapes = (plan: Pick<TentPlan, "stations">): EdgeTape[] =>
  EDGES.map((edge): EdgeTape => {
    const [from, to] = endsOf(edge);
    const [first, last] = [cornerOf(plan, from), cornerOf(plan, to)];
    const lengthFt = distanceFt(first, last);
    const here = [...plan.stations.filter((s) => s.edge === edge), last];
    const marks = here.map((s) => ({ station: s.id, kind: s.kind, readingFt: distanceFt(first, s), backFt: distanceFt(s, last) }));
    return { edge, from, to, lengthFt, marks };
  });

/**
 * Every plate exactly once, on its stake line. A plate at a stake-line corner belongs to the line that starts there.
 *
 * @example stakeLines(plan)[0].lengthFt // 112
 */
export function stakeLines(plan: Pick<TentPlan, "stations" | "plates" | "spec">): StakeLine[] {
  const stations = new Map(plan.stations.map((s) => [s.id, s]));
  const nth = new Map<string, number>();
  const placed = plan.plates.map((plate) => {
    const no = (nth.get(plate.station) ?? 0) + 1;
    nth.set(plate.station, no);
    return { plate, no, edge: stakeLineOf(plate, stations.get(plate.station)!) };
  });
  return EDGES.map((edge): StakeLine => {
    const [from, to] = endsOf(edge);
    const { setbackFt } = plan.spec;
    const [start, end] = [stakeLineCorner(cornerOf(plan, from), setbackFt), stakeLineCorner(cornerOf(plan, to), setbackFt)];
    const lengthFt = distanceFt(start, end);
    const marks = placed
      .filter((p) => p.edge === edge)
      .map(({ plate, no }): PlateMark => {
        const { alongFt, asideFt } = alongAndAside(plate, start, end, lengthFt);
        const { station, bearingDeg } = plate;
        const stakes = plate.replaced ? 0 : plate.stakes;
        return { station, plate: no, stakes, bearingDeg, readingFt: alongFt, backFt: toGrid(lengthFt - alongFt), asideFt };
      })
      .sort((a, b) => a.readingFt - b.readingFt);
    return { edge, from, to, start, end, lengthFt, setbackFt, marks };
  });
}

/**
 * Both diagonals between the corner marks, in feet.
 *
 * @example diagonalsOf(plan) // { AC: 128.062485, BD: 128.062485 }
 */
export const diagonalsOf = (plan: Pick<TentPlan, "stations">): { readonly AC: number; readonly BD: number } => ({
  AC: distanceFt(cornerOf(plan, "A"), cornerOf(plan, "C")),
  BD: distanceFt(cornerOf(plan, "B"), cornerOf(plan, "D")),
});

/**
 * Rounds a length in feet to the nearest eighth of an inch; the result is in feet.
 *
 * @example toEighthIn(10.06) // 10.0625
 */
export const toEighthIn = (ft: number): number => Math.round(ft * 96) / 96;

/**
 * Converts feet to whole millimeters. A foot is 0.3048 m, exact by definition (NIST SP 811, B.8).
 *
 * @example toMm(10) // 3048
 */
export const toMm = (ft: number): number => Math.round(ft * 304.8) + 0;

/**
 * The station at a corner, at its shifted position if the corner was shifted.
 *
 * @example cornerOf(plan, "C").yFt // 100
 */
export const cornerOf = ({ stations }: Pick<TentPlan, "stations">, corner: Corner): Station => stations.find((s) => s.id === corner)!;

/**
 * The corners an edge runs from and to, clockwise.
 *
 * @example endsOf("DA") // ["D", "A"]
 */
export const endsOf = (edge: EdgeName): [Corner, Corner] => [edge[0] as Corner, edge[1] as Corner];

/** Unit vector out of the tent at each edge. */
export const OUTWARD: Readonly<Record<EdgeName, Point>> = {
  AB: { xFt: -1, yFt: 0 },
  BC: { xFt: 0, yFt: 1 },
  CD: { xFt: 1, yFt: 0 },
  DA: { xFt: 0, yFt: -1 },
};

/** The edge that ends where this one starts. */
const previousEdge = (edge: EdgeName): EdgeName => EDGES[(EDGES.indexOf(edge) + 3) % 4]!;

const outwardFt = (edge: EdgeName, from: Point, to: Point): number =>
  OUTWARD[edge].xFt * (to.xFt - from.xFt) + OUTWARD[edge].yFt * (to.yFt - from.yFt);

/** A corner plate belongs to the stake line of the edge it is farther out from; a tie goes to the edge that starts there. */
function stakeLineOf(plate: StakePlate, station: Station): EdgeName {
  if (station.kind !== "corner") return station.edge;
  const [first, second] = [outwardFt(previousEdge(station.edge), station, plate), outwardFt(station.edge, station, plate)];
  return first > second && !nearlyEqual(first, second) ? previousEdge(station.edge) : station.edge;
}

function stakeLineCorner(corner: Station, setbackFt: number): Point {
  const [a, b] = [OUTWARD[previousEdge(corner.edge)], OUTWARD[corner.edge]];
  return { xFt: toGrid(corner.xFt + (a.xFt + b.xFt) * setbackFt), yFt: toGrid(corner.yFt + (a.yFt + b.yFt) * setbackFt) };
}

/** Coordinates of a point relative to a tape: distance along it, and offset square out from it. */
function alongAndAside(p: Point, start: Point, end: Point, lengthFt: number): { alongFt: number; asideFt: number } {
  const [ux, uy] = [(end.xFt - start.xFt) / lengthFt, (end.yFt - start.yFt) / lengthFt];
  const [dx, dy] = [p.xFt - start.xFt, p.yFt - start.yFt];
  return { alongFt: toGrid(dx * ux + dy * uy), asideFt: toGrid(dy * ux - dx * uy) };
}
