import { toGrid } from "./grid.ts";
import { ridgePositionsFt } from "./ridge.ts";
import type { InteriorPole, PatternSpec, Point, PoleRow, TentSpec } from "./types.ts";

export type Interior = { readonly rows: readonly PoleRow[]; readonly poles: readonly InteriorPole[] };

/**
 * The interior poles of the pattern, before anything is left out or added. Centers are C1, C2 … and quarters Q1, Q2 …,
 * both counted from the near end (DA) and from left to right. Rows in the same order: hip-DA, line-1 …, hip-BC.
 */
export function patternOf(spec: PatternSpec): Interior {
  const quarterOf = counter("Q");
  const centerOf = counter("C");
  const poles = [
    ...hipEnd(spec, "near").map((p): InteriorPole => ({ id: quarterOf(), kind: "quarter", row: "hip-DA", ...p })),
    ...ridgePositionsFt(spec).flatMap((yFt, i): InteriorPole[] => {
      const row = `line-${i + 1}`;
      const center: InteriorPole = { id: centerOf(), kind: "center", row, ring: 0, xFt: toGrid(spec.widthFt / 2), yFt };
      const quarters = crossLine(spec, yFt).map((p): InteriorPole => ({ id: quarterOf(), kind: "quarter", row, ...p }));
      return [...quarters, center];
    }),
    ...hipEnd(spec, "far").map((p): InteriorPole => ({ id: quarterOf(), kind: "quarter", row: "hip-BC", ...p })),
  ];
  return { rows: rowsOf(poles), poles };
}

/** The interior poles that this top carries: the pattern less what is left out, and the added ones as X1, X2 … */
export function polesOf(spec: PatternSpec & Pick<TentSpec, "leaveOut" | "add">): Interior {
  const kept = patternOf(spec).poles.filter((p) => !spec.leaveOut.includes(p.id));
  const added = spec.add.map(
    ({ kind, xFt, yFt }, i): InteriorPole => ({ id: `X${i + 1}`, kind, row: "added", ring: kind === "center" ? 0 : 1, xFt, yFt }),
  );
  const poles = [...kept, ...added];
  return { rows: rowsOf(poles), poles };
}

/** How far ring k of the R rings stands in from the eave, in feet: k/(R+1) of the way to the ridge. Common practice, no source. */
export const ringDepthFt = (spec: PatternSpec, ring: number): number => toGrid((spec.widthFt / 2) * (ring / (spec.quarterRings + 1)));

type Spot = Point & { readonly ring: number };

const ringsOf = (spec: PatternSpec): number[] => Array.from({ length: spec.quarterRings }, (_, i) => i + 1);

/** A cross line carries a quarter pole for each ring on either slope. Common practice, no source. */
function crossLine(spec: PatternSpec, yFt: number): Spot[] {
  const left = ringsOf(spec).map((ring): Spot => ({ ring, xFt: ringDepthFt(spec, ring), yFt }));
  const right = left.map((p): Spot => ({ ...p, xFt: toGrid(spec.widthFt - p.xFt) }));
  return [...left, ...right.reverse()];
}

/**
 * A hip end carries 2(R+1−k)+1 quarter poles for ring k, evenly from one hip line to the other: with one ring three,
 * with two five and three. Common practice, no source.
 */
function hipEnd(spec: PatternSpec, end: "near" | "far"): Spot[] {
  const contours = ringsOf(spec).map((ring): Spot[] => {
    const depthFt = ringDepthFt(spec, ring);
    const gaps = 2 * (spec.quarterRings + 1 - ring);
    const wideFt = spec.widthFt - 2 * depthFt;
    const yFt = end === "near" ? depthFt : toGrid(spec.lengthFt - depthFt);
    return Array.from({ length: gaps + 1 }, (_, i) => ({ ring, xFt: toGrid(depthFt + (wideFt * i) / gaps), yFt }));
  });
  return (end === "near" ? contours : contours.reverse()).flat();
}

function rowsOf(poles: readonly InteriorPole[]): PoleRow[] {
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
