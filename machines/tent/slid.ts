import { toGrid } from "./grid.ts";
import type { EdgeName, Point, TentPlan } from "./types.ts";

/** Clockwise along each edge, as a unit. */
const ALONG: Readonly<Record<EdgeName, Point>> = {
  AB: { xFt: 0, yFt: 1 },
  BC: { xFt: 1, yFt: 0 },
  CD: { xFt: 0, yFt: -1 },
  DA: { xFt: -1, yFt: 0 },
};

/**
 * The same plan with the plates of some side stations moved along their edge, in feet, clockwise, under 0 the other way. Poles stay
 * where the cloth has them; corners and seam ends do not slide. The same plan where nothing does.
 */
export function withSlides(plan: TentPlan, slides: ReadonlyMap<string, number>): TentPlan {
  if (slides.size === 0) return plan;
  const stations = new Map(plan.stations.map((station) => [station.id, station]));
  const plates = plan.plates.map((plate) => {
    const station = stations.get(plate.station);
    const byFt = slides.get(plate.station);
    if (byFt === undefined || station?.kind !== "side") return plate;
    const { xFt, yFt } = ALONG[station.edge];
    return { ...plate, xFt: toGrid(plate.xFt + xFt * byFt), yFt: toGrid(plate.yFt + yFt * byFt) };
  });
  return { ...plan, plates };
}
