import { platesOf } from "./anchors.ts";
import { distanceFt } from "./grid.ts";
import { kitOf } from "./kit.ts";
import { polesOf } from "./poles.ts";
import { seamsOf } from "./seams.ts";
import { piecesOf } from "./sections.ts";
import { stationsOf } from "./stations.ts";
import type { TentPlan, TentSpec } from "./types.ts";

/**
 * What stands on the ground for a spec that `checkSpec` has accepted. Lengths in feet, kept to a millionth of a foot.
 *
 * @example planTent(spec).stations.length // 36 for 80×100 ft in split ends with 10 ft spacing
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
