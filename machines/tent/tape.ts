import { distanceFt, same, toGrid } from "./grid.ts";
import { type Corner, EDGES, type EdgeName, type Point, type StakePlate, type Station, type StationKind, type TentPlan } from "./types.ts";

/** Read off a tape in feet: from where it starts, and back from where it ends. */
export type Reading = { readonly readingFt: number; readonly backFt: number };

/** The marks of one edge off one tape, from its first corner to its last, both included. */
export type EdgeTape = {
  readonly edge: EdgeName;
  readonly from: Corner;
  readonly to: Corner;
  readonly lengthFt: number;
  readonly marks: readonly (Reading & { readonly station: string; readonly kind: StationKind })[];
};

/** A plate off the tape along the stake line. `asideFt` is how far outside the tape it lies: 0 but where a corner was shifted. */
export type PlateMark = Reading & {
  readonly station: string;
  /** 1 is the first plate of its station, going clockwise. */
  readonly plate: number;
  readonly stakes: number;
  readonly bearingDeg: number;
  readonly asideFt: number;
};

/**
 * The stake line outside one edge, off one tape from stake-line corner to stake-line corner. A stake-line corner lies the
 * setback out from the tent's corner, square to both edges there: `start` and `end`, in the plane of the plan.
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
 * Running readings for every edge, clockwise from A: each is measured from the first corner, never bay by bay, so that
 * errors do not add up. The places are the plan's own, also where a corner was shifted or the rings were counted.
 *
 * @example edgeTapes(plan)[0].marks.map((m) => m.readingFt) // AB of 80×100 ft: 0, 10, 20, 30, 40, 50, 60 … 100
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
 * Every plate once, on the stake line that it lies on. One that lies on two, at a stake-line corner, is taken with the
 * line that starts there.
 */
export function stakeLines(plan: Pick<TentPlan, "stations" | "plates" | "spec">): StakeLine[] {
  const stations = new Map(plan.stations.map((s) => [s.id, s]));
  const nth = new Map<string, number>();
  const placed = plan.plates.map((plate) => {
    const no = (nth.get(plate.station) ?? 0) + 1;
    nth.set(plate.station, no);
    return { plate, no, edge: lineOf(plate, stations.get(plate.station)!) };
  });
  return EDGES.map((edge): StakeLine => {
    const [from, to] = endsOf(edge);
    const { setbackFt } = plan.spec;
    const [start, end] = [stakeCorner(cornerOf(plan, from), setbackFt), stakeCorner(cornerOf(plan, to), setbackFt)];
    const lengthFt = distanceFt(start, end);
    const marks = placed
      .filter((p) => p.edge === edge)
      .map(({ plate, no }): PlateMark => {
        const { alongFt, asideFt } = offTape(plate, start, end, lengthFt);
        const { station, stakes, bearingDeg } = plate;
        return { station, plate: no, stakes, bearingDeg, readingFt: alongFt, backFt: toGrid(lengthFt - alongFt), asideFt };
      })
      .sort((a, b) => a.readingFt - b.readingFt);
    return { edge, from, to, start, end, lengthFt, setbackFt, marks };
  });
}

/** Both diagonals of the corner marks in feet. */
export const diagonalsOf = (plan: Pick<TentPlan, "stations">): { readonly AC: number; readonly BD: number } => ({
  AC: distanceFt(cornerOf(plan, "A"), cornerOf(plan, "C")),
  BD: distanceFt(cornerOf(plan, "B"), cornerOf(plan, "D")),
});

/** The nearest eighth of an inch, in feet. */
export const toEighthIn = (ft: number): number => Math.round(ft * 96) / 96;

/** Whole millimeters. A foot is 0.3048 m, exact by definition (NIST SP 811, B.8). */
export const toMm = (ft: number): number => Math.round(ft * 304.8) + 0;

/** The mark of a corner: its station, which stands where the corner was shifted to. */
export const cornerOf = ({ stations }: Pick<TentPlan, "stations">, corner: Corner): Station => stations.find((s) => s.id === corner)!;

/** The corners that an edge runs from and to, clockwise. */
export const endsOf = (edge: EdgeName): [Corner, Corner] => [edge[0] as Corner, edge[1] as Corner];

/** Outward from an edge, as the plan lays its plates. */
export const OUT: Readonly<Record<EdgeName, Point>> = {
  AB: { xFt: -1, yFt: 0 },
  BC: { xFt: 0, yFt: 1 },
  CD: { xFt: 1, yFt: 0 },
  DA: { xFt: 0, yFt: -1 },
};

/** The edge that ends where the other starts. */
const before = (edge: EdgeName): EdgeName => EDGES[(EDGES.indexOf(edge) + 3) % 4]!;

const outFt = (edge: EdgeName, from: Point, to: Point): number => OUT[edge].xFt * (to.xFt - from.xFt) + OUT[edge].yFt * (to.yFt - from.yFt);

/** A corner's plate that lies farther out from the edge that ends there is on the stake line of that edge. */
function lineOf(plate: StakePlate, station: Station): EdgeName {
  if (station.kind !== "corner") return station.edge;
  const [first, second] = [outFt(before(station.edge), station, plate), outFt(station.edge, station, plate)];
  return first > second && !same(first, second) ? before(station.edge) : station.edge;
}

function stakeCorner(corner: Station, setbackFt: number): Point {
  const [a, b] = [OUT[before(corner.edge)], OUT[corner.edge]];
  return { xFt: toGrid(corner.xFt + (a.xFt + b.xFt) * setbackFt), yFt: toGrid(corner.yFt + (a.yFt + b.yFt) * setbackFt) };
}

/** Along the tape from its start, and square out from it. */
function offTape(p: Point, start: Point, end: Point, lengthFt: number): { alongFt: number; asideFt: number } {
  const [ux, uy] = [(end.xFt - start.xFt) / lengthFt, (end.yFt - start.yFt) / lengthFt];
  const [dx, dy] = [p.xFt - start.xFt, p.yFt - start.yFt];
  return { alongFt: toGrid(dx * ux + dy * uy), asideFt: toGrid(dy * ux - dx * uy) };
}
