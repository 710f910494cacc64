import { toGrid } from "./grid.ts";
import { ridgePositionsFt } from "./ridge.ts";
import type { InteriorPole, PatternSpec, Point, PoleRow, TentSpec } from "./types.ts";

export type InteriorPoles = { readonly rows: readonly PoleRow[]; readonly poles: readonly InteriorPole[] };

/**
 * The interior poles of the pattern, before any are omitted or added. Center poles are C1, C2 … and quarter poles Q1, Q2 …,
 * numbered from the near end (DA) and from left to right. Rows are in the same order: hip-DA, line-1 …, hip-BC.
 *
 * @example patternOf(spec).poles.map((pole) => pole.id).join(" ") // "Q1 Q2 Q3 Q4 Q5 C1 Q6 Q7 C2 Q8 Q9 Q10"
 */
export function patternOf(spec: PatternSpec): InteriorPoles {
  const quarterOf = counter("Q");
  const centerOf = counter("C");
  const poles = [
    ...hipEndQuarters(spec, "near").map((p): InteriorPole => ({ id: quarterOf(), kind: "quarter", row: "hip-DA", ...p })),
    ...ridgePositionsFt(spec).flatMap((yFt, i): InteriorPole[] => {
      const row = `line-${i + 1}`;
      const center: InteriorPole = { id: centerOf(), kind: "center", row, ring: 0, xFt: toGrid(spec.widthFt / 2), yFt };
      const quarters = crossLineQuarters(spec, yFt).map((p): InteriorPole => ({ id: quarterOf(), kind: "quarter", row, ...p }));
      return [...quarters, center];
    }),
    ...hipEndQuarters(spec, "far").map((p): InteriorPole => ({ id: quarterOf(), kind: "quarter", row: "hip-BC", ...p })),
  ];
  return { rows: groupByRow(poles), poles };
}

/**
 * The interior poles of this top: the pattern without the omitted poles, plus the added ones as X1, X2 …
 *
 * @example polesOf({ ...spec, leaveOut: ["Q1", "Q2", "Q3"] }).rows[0].id // "line-1"
 */
export function polesOf(spec: PatternSpec & Pick<TentSpec, "leaveOut" | "add">): InteriorPoles {
  const kept = patternOf(spec).poles.filter((p) => !spec.leaveOut.includes(p.id));
  const added = spec.add.map(
    ({ kind, xFt, yFt }, i): InteriorPole => ({ id: `X${i + 1}`, kind, row: "added", ring: kind === "center" ? 0 : 1, xFt, yFt }),
  );
  const poles = [...kept, ...added];
  return { rows: groupByRow(poles), poles };
}

/**
 * Distance of a ring of quarter poles in from the eave, in feet. Ring k of R is k/(R+1) of the way to the ridge. Common
 * practice, no source.
 *
 * @example ringDepthFt(spec, 1) // 20
 */
export const ringDepthFt = (spec: PatternSpec, ring: number): number => toGrid((spec.widthFt / 2) * (ring / (spec.quarterRings + 1)));

type RingPoint = Point & { readonly ring: number };

const ringsOf = (spec: PatternSpec): number[] => Array.from({ length: spec.quarterRings }, (_, i) => i + 1);

/** Each cross line has one quarter pole per ring on each slope. Common practice, no source. */
function crossLineQuarters(spec: PatternSpec, yFt: number): RingPoint[] {
  const left = ringsOf(spec).map((ring): RingPoint => ({ ring, xFt: ringDepthFt(spec, ring), yFt }));
  const right = left.map((p): RingPoint => ({ ...p, xFt: toGrid(spec.widthFt - p.xFt) }));
  return [...left, ...right.reverse()];
}

/**
 * Each hip end has 2(R+1−k)+1 quarter poles on ring k, evenly spaced between the hip lines: three with one ring, five and
 * three with two. Common practice, no source.
 */
function hipEndQuarters(spec: PatternSpec, end: "near" | "far"): RingPoint[] {
  const contours = ringsOf(spec).map((ring): RingPoint[] => {
    const depthFt = ringDepthFt(spec, ring);
    const gaps = 2 * (spec.quarterRings + 1 - ring);
    const wideFt = spec.widthFt - 2 * depthFt;
    const yFt = end === "near" ? depthFt : toGrid(spec.lengthFt - depthFt);
    return Array.from({ length: gaps + 1 }, (_, i) => ({ ring, xFt: toGrid(depthFt + (wideFt * i) / gaps), yFt }));
  });
  return (end === "near" ? contours : contours.reverse()).flat();
}

function groupByRow(poles: readonly InteriorPole[]): PoleRow[] {
  const ids = [...new Set(poles.map((p) => p.row))];
  return ids.map((id): PoleRow => {
    const here = poles.filter((p) => p.row === id);
    const of = (kind: InteriorPole["kind"]) => here.filter((p) => p.kind === kind).map((p) => p.id);
    const kind = id === "added" ? "added" : id.startsWith("hip") ? "hip" : "cross";
    return { id, kind, quarters: of("quarter"), centers: of("center") };
  });
}

function counter(letter: string): () => string {
  let n = 0;
  return () => `${letter}${++n}`;
}
