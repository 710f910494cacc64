import { platesOf } from "./anchors.ts";
import { distanceFt } from "./grid.ts";
import { kitOf } from "./kit.ts";
import { polesOf } from "./poles.ts";
import { seamsOf } from "./seams.ts";
import { piecesOf } from "./sections.ts";
import { stationsOf } from "./stations.ts";
import type { TentPlan, TentSpec } from "./types.ts";

/**
 * Computes the whole plan of a tent: pieces, seams, poles, stations, plates, and kit. The spec must come from `checkSpec`.
 * Lengths in feet, rounded to a millionth of a foot.
 *
 * @example planTent(spec).stations.length // 36
 */
export function planTent(spec: TentSpec): TentPlan {
  const pieces = piecesOf(spec);
  const { rows, poles } = polesOf(spec);
  const seams = seamsOf(spec, pieces, poles);
  const { stations, edges } = stationsOf(spec, seams);
  const plates = platesOf(spec, stations);
  const { widthFt, lengthFt } = spec;
  const mark = (id: string) => stations.find((s) => s.id === id)!;
  const diagonalFt = distanceFt(mark("A"), mark("C"));
  const kit = kitOf({ pieces, poles, stations, plates });
  return { spec, widthFt, lengthFt, pieces, seams, rows, poles, edges, stations, plates, diagonalFt, kit };
}
