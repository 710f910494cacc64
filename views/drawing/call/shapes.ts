import type { Mark } from "../../../machines/picture/mark.ts";
import { cornerOf, endsOf, stakeLines } from "../../../machines/tent/tape.ts";
import type { Corner, EdgeName, Point, Seam, SeamHalf, TentPlan } from "../../../machines/tent/types.ts";
import type { XY } from "../dimension.tsx";
import { type SmallFrame, tenth } from "./small-frame.ts";

/** What a mark is drawn as, in px: a surface, a way that is walked or measured, a spot, or spots that belong together. */
export type Shape =
  | { readonly is: "area"; readonly points: readonly XY[]; readonly middle: XY; readonly open?: boolean }
  | {
      readonly is: "way";
      readonly points: readonly XY[];
      readonly ends: "arrow" | "both" | "none";
      readonly ticks: readonly Tick[];
      /** Stations on it. */
      readonly dots?: readonly XY[];
    }
  | { readonly is: "spot"; readonly at: XY; readonly px: number; readonly no?: number }
  | { readonly is: "band"; readonly points: readonly XY[] };
/** A plate on its way, across it. */
export type Tick = { readonly at: XY; readonly turnDeg: number };

const INSET_PX = 3;
const CORNER_PX = 11;
const STATION_PX = 7;

/** The shapes of a mark. With `counts` nothing on a way can be counted. */
export function shapesOf(mark: Mark, plan: TentPlan, frame: SmallFrame, counts: boolean): Shape[] {
  const { at, cloth, turn } = frame;
  const way = (points: readonly Point[], ends: "arrow" | "both" | "none", ticks: readonly Tick[] = []): Shape => ({
    is: "way",
    points: points.map(at),
    ends,
    ticks,
  });
  const corner = (id: Corner) => cornerOf(plan, id);
  switch (mark.is) {
    case "piece":
      return [areaOf(plan.pieces.find((p) => p.id === mark.id)!.at, frame)];
    case "ground":
      return [areaOf({ xFt: 0, yFt: 0, widthFt: plan.widthFt, lengthFt: plan.lengthFt }, frame)];
    case "half": {
      const run = runOf(plan, mark.id);
      const [center, ring, edge] = [run.center, run.ring ?? run.center, run.edge].map(cloth) as [XY, XY, XY];
      const points = { out: [center, run.ring ? ring : edge], back: [edge, ring], look: [center, edge] }[mark.way];
      return [
        { is: "band", points: [center, edge] },
        { is: "way", points, ends: "arrow", ticks: [] },
      ];
    }
    case "corner":
      return [{ is: "spot", at: at(corner(mark.corner)), px: CORNER_PX, ...(mark.pair && { no: mark.pair }) }];
    case "station":
      return [{ is: "spot", at: at(plan.stations.find((s) => s.id === mark.id)!), px: STATION_PX }];
    case "edge":
      return [{ ...way(walked(endsOf(mark.edge).map(corner), mark), "arrow"), ...(!counts && { dots: between(mark.edge, plan).map(at) }) }];
    case "stakeLine": {
      const { start, end, marks } = stakeLines(plan).find((l) => l.edge === mark.edge)!;
      // Plates on the diagonal of a corner would cross the arrows there.
      const plates = counts ? [] : marks.filter((m) => m.bearingDeg % 90 === 0);
      return [
        way(
          walked([start, end], mark),
          "arrow",
          plates.map((m) => ({ at: at(toward(start, end, m.readingFt)), turnDeg: m.bearingDeg + turn })),
        ),
      ];
    }
    case "poles":
      return polesOf(mark.ids, plan, frame);
    case "length":
      return [way([corner(mark.name[0] as Corner), corner(mark.name[1] as Corner)], "both")];
    case "angle": {
      const [a, along, across] = rightAngleAt(plan, mark.alongFt, mark.acrossFt);
      return [way([a, along], "none"), way([a, across], "none"), way([along, across], "none")];
    }
    case "setback": {
      const [edge, stakes] = setbackAt(plan);
      return [way([edge, stakes], "both")];
    }
  }
}

/** The stations of an edge, without its corners: those lie under the arrowheads. */
const between = (edge: EdgeName, { stations }: TentPlan): readonly Point[] =>
  stations.filter((s) => s.edge === edge && s.kind !== "corner");

/** A line in the direction in which it is walked. */
const walked = (line: readonly Point[], { back }: { readonly back?: true }): readonly Point[] => (back ? line.toReversed() : line);

/** The points of the right angle at A: A itself, the one on the baseline, the one on edge DA. */
export function rightAngleAt(plan: TentPlan, alongFt: number, acrossFt: number): [Point, Point, Point] {
  const a = cornerOf(plan, "A");
  return [a, toward(a, cornerOf(plan, "B"), alongFt), toward(a, cornerOf(plan, "D"), acrossFt)];
}

/** From the middle of the baseline square out to the stake line. */
export function setbackAt(plan: TentPlan): [Point, Point] {
  const [a, b] = [cornerOf(plan, "A"), cornerOf(plan, "B")];
  const edge = { xFt: (a.xFt + b.xFt) / 2, yFt: (a.yFt + b.yFt) / 2 };
  return [edge, { xFt: edge.xFt - plan.spec.setbackFt, yFt: edge.yFt }];
}

/** A half of a seam on the cloth: its center ring, the quarter ring farthest out if it has any, and its end at the edge. */
export type Run = { readonly half: SeamHalf; readonly center: Point; readonly ring: Point | null; readonly edge: Point };

export function runOf({ seams }: TentPlan, id: string): Run {
  const seam = seams.find((s) => s.halves.some((h) => h.id === id))!;
  const half = seam.halves.find((h) => h.id === id)!;
  const { center, edge } = endsOfHalf(seam, half);
  const farthestFt = half.ringsAtFt.at(-1);
  return { half, center, edge, ring: farthestFt === undefined ? null : toward(center, edge, farthestFt) };
}

function endsOfHalf({ kind, from, to }: Seam, { toward: edge }: SeamHalf): { center: Point; edge: Point } {
  if (kind === "ridge") return { center: from, edge: to };
  return { center: { xFt: (from.xFt + to.xFt) / 2, yFt: (from.yFt + to.yFt) / 2 }, edge: edge === "AB" ? from : to };
}

function toward(from: Point, to: Point, ft: number): Point {
  const part = ft / (Math.hypot(to.xFt - from.xFt, to.yFt - from.yFt) || 1);
  return { xFt: from.xFt + (to.xFt - from.xFt) * part, yFt: from.yFt + (to.yFt - from.yFt) * part };
}

/** Each pole a spot, and those of a ring of quarters, or of a cross line, on one band. */
function polesOf(ids: readonly string[], { poles }: TentPlan, { at, polePx }: SmallFrame): Shape[] {
  const here = ids.map((id) => poles.find((p) => p.id === id)!);
  const rows = [...new Set(here.map((p) => p.yFt))].map((yFt) => here.filter((p) => p.yFt === yFt).sort((a, b) => a.xFt - b.xFt));
  return [
    ...rows.flatMap((row): Shape[] => (row.length > 1 ? [{ is: "band", points: [at(row[0]!), at(row.at(-1)!)] }] : [])),
    ...here.map((pole): Shape => ({ is: "spot", at: at(pole), px: polePx })),
  ];
}

function areaOf({ xFt, yFt, widthFt, lengthFt }: Point & { widthFt: number; lengthFt: number }, { cloth, pxPerFt }: SmallFrame): Shape {
  const inFt = Math.min(INSET_PX / pxPerFt, widthFt / 4, lengthFt / 4);
  const [left, right, near, far] = [xFt + inFt, xFt + widthFt - inFt, yFt + inFt, yFt + lengthFt - inFt];
  const points = [
    [left, near],
    [left, far],
    [right, far],
    [right, near],
  ].map(([x, y]) => cloth({ xFt: x!, yFt: y! }));
  return { is: "area", points, middle: cloth({ xFt: xFt + widthFt / 2, yFt: yFt + lengthFt / 2 }) };
}

/** The middle of a line, in px. */
export const middleOf = (from: XY, to: XY): XY => [tenth((from[0] + to[0]) / 2), tenth((from[1] + to[1]) / 2)];
