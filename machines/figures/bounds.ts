export type Bounds = { readonly from: number; readonly to: number };

/** Nobody stands outside in a wind of 200 mph to read it. Against slips and nonsense. Common practice, no source. */
export const WIND_BOUNDS: Bounds = { from: 0, to: 200 };
/** Where the wind blows from, in degrees from north. */
export const COMPASS_BOUNDS: Bounds = { from: 0, to: 360 };

/** @example isWithin(201, WIND_BOUNDS) // false */
export const isWithin = (n: number, { from, to }: Bounds): boolean => n >= from && n <= to;
