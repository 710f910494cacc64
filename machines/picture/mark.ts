import type { LengthName } from "../site/lengths.ts";
import type { RightAngle } from "../site/right-angle.ts";
import { CORNERS, type Corner, EDGES, type EdgeName, type TentPlan } from "../tent/types.ts";

/** What is done along a half of a seam: laced from the center ring out, gone back over and tied off, or felt along. */
export type HalfWay = "out" | "back" | "look";

/** A thing of the plan that a call can point at. Lengths in feet. */
export type Mark =
  | { readonly is: "piece"; readonly id: string }
  | { readonly is: "half"; readonly id: string; readonly way: HalfWay }
  /** `pair`: worked together with the one across from it, and which pair comes first. */
  | { readonly is: "corner"; readonly corner: Corner; readonly pair?: 1 | 2 }
  | { readonly is: "station"; readonly id: string }
  /** All along an edge, corner to corner: its rings, marks, or side poles. `back`: from its second corner to its first. */
  | { readonly is: "edge"; readonly edge: EdgeName; readonly back?: true }
  /** All along the stake line outside an edge: its stakes, plates, and straps. */
  | { readonly is: "stakeLine"; readonly edge: EdgeName; readonly back?: true }
  /** Poles that go up or come down together; a single one too. */
  | { readonly is: "poles"; readonly ids: readonly string[] }
  /** One length between two corner marks. */
  | { readonly is: "length"; readonly name: LengthName }
  /** The right angle at A by which the first corner is squared. */
  | ({ readonly is: "angle" } & RightAngle)
  /** From the edge out to the stake line. */
  | { readonly is: "setback" }
  /** Everything under the top. */
  | { readonly is: "ground" };

/** A name for what a mark points at, the same whatever is done there. */
export function keyOf(mark: Mark): string {
  switch (mark.is) {
    case "piece":
    case "half":
    case "station":
      return `${mark.is} ${mark.id}`;
    case "corner":
      return `corner ${mark.corner}`;
    case "edge":
    case "stakeLine":
      return `${mark.is} ${mark.edge}`;
    case "poles":
      return `poles ${mark.ids.join(" ")}`;
    case "length":
      return `length ${mark.name}`;
    case "angle":
    case "setback":
    case "ground":
      return mark.is;
  }
}

/** Whether two lists of marks point at the same things. */
export const samePlace = (a: readonly Mark[], b: readonly Mark[]): boolean => a.map(keyOf).sort().join() === b.map(keyOf).sort().join();

export const edgeMarks = (edges: readonly EdgeName[] = EDGES): Mark[] => edges.map((edge) => ({ is: "edge", edge }));
export const stakeLineMarks = (edges: readonly EdgeName[] = EDGES): Mark[] => edges.map((edge) => ({ is: "stakeLine", edge }));
/**
 * Edges whose crews walk abreast, each across from the other: clockwise around the tent they would start at opposite ends and
 * load it diagonally.
 */
export const abreast = (marks: readonly Mark[]): Mark[] =>
  marks.map((mark) => ((mark.is === "edge" || mark.is === "stakeLine") && WALKED_BACK.has(mark.edge) ? { ...mark, back: true } : mark));
const WALKED_BACK: ReadonlySet<EdgeName> = new Set(["CD", "DA"]);
export const cornerMarks = (): Mark[] => CORNERS.map((corner) => ({ is: "corner", corner }));
/** Corners that are worked in opposite pairs. */
export const inPairs = (marks: readonly Mark[]): Mark[] =>
  marks.map((mark) => (mark.is === "corner" ? { ...mark, pair: mark.corner === "A" || mark.corner === "C" ? 1 : 2 } : mark));
export const pieceMarks = ({ pieces }: TentPlan): Mark[] => pieces.map(({ id }) => ({ is: "piece", id }));
export const halfMarks = ({ seams }: TentPlan, way: HalfWay): Mark[] =>
  seams.flatMap(({ halves }) => halves.map(({ id }): Mark => ({ is: "half", id, way })));
/** All poles inside, row by row. */
export const poleMarks = ({ rows }: TentPlan): Mark[] =>
  rows
    .flatMap(({ quarters, centers }) => [quarters, ...centers.map((id) => [id])])
    .flatMap((ids): Mark[] => (ids.length > 0 ? [{ is: "poles", ids }] : []));
