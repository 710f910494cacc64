import type { Unit, Value } from "./gates.ts";

export type Bounds = { readonly from: number; readonly to: number };

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
};
export const COUNT_BOUNDS: Bounds = { from: 0, to: 100_000 };
/** Between corner marks, ft: no tent is longer than 400 ft. */
export const LENGTH_BOUNDS: Bounds = { from: 0.1, to: 1000 };
/** Nobody stands outside in a wind of 200 mph to read it. */
export const WIND_BOUNDS: Bounds = { from: 0, to: 200 };

export const isWithin = (n: number, { from, to }: Bounds): boolean => n >= from && n <= to;

/** A number of an answer that nobody can mean, with its bounds and its unit; `null` where there is none. */
export function unbelievable(value: Value): { readonly n: number; readonly unit: Unit | "count"; readonly bounds: Bounds } | null {
  const first = (numbers: readonly number[], unit: Unit | "count", bounds: Bounds) => {
    const n = numbers.find((number) => !isWithin(number, bounds));
    return n === undefined ? null : { n, unit, bounds };
  };
  switch (value.kind) {
    case "count":
      return first([value.n], "count", COUNT_BOUNDS);
    case "counts":
      return first(Object.values(value.n), "count", COUNT_BOUNDS);
    case "measure":
      return first([value.n], value.unit, MEASURE_BOUNDS[value.unit]);
    case "lengths":
      return first(Object.values(value.ft), "ft", LENGTH_BOUNDS);
    default:
      return null;
  }
}
