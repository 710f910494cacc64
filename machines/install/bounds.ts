import type { Bounds } from "../figures/bounds.ts";
import type { Unit } from "./checks/units.ts";

export { type Bounds, COMPASS_BOUNDS, isWithin, WIND_BOUNDS } from "../figures/bounds.ts";

/** Of the numbers that are answered: against slips and nonsense, not limits of a tent. Common practice, no source. */
const MAX_FT = 10_000;
export const MEASURE_BOUNDS: Readonly<Record<Unit | "mm" | "m", Bounds>> = {
  ft: { from: 0, to: MAX_FT },
  in: { from: 0, to: MAX_FT * 12 },
  m: { from: 0, to: 3000 },
  mm: { from: 0, to: 3_000_000 },
  deg: { from: -90, to: 90 },
  lbf: { from: 0, to: 100_000 },
  turns: { from: 0, to: 1000 },
  mph: { from: 0, to: 200 },
};
export const COUNT_BOUNDS: Bounds = { from: 0, to: 100_000 };
/** Between corner marks, ft: no tent is longer than 400 ft. */
export const LENGTH_BOUNDS: Bounds = { from: 0.1, to: 1000 };
