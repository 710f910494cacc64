import type { Source } from "./gates.ts";

export const OVERHEAD: Source = {
  title: "29 CFR 1926.1408 Table A; 1926.1407(a)(2) where the voltage is not known",
  section: "plus the longest pole, so that a falling one cannot reach",
};
export const SEPARATION: Source = { title: "International Fire Code", section: "3103.8.2: 20 ft, guy ropes counted as part of the tent" };
export const EXITS: Source = { title: "International Fire Code", section: "Table 3103.12.2" };

/**
 * Clearance from an overhead line in feet, by its voltage in kV; `null` above 1,000 kV, where the line's owner or a
 * registered engineer sets it. Source: 29 CFR 1926.1408 Table A; voltage not known: 20 ft, 1926.1407(a)(2), which
 * holds up to 350 kV only. The rule is written for cranes: for a pole raised by hand it is the best published yardstick.
 */
export function overheadClearanceFt(kv: number | null): number | null {
  if (kv === null) return 20;
  const row = TABLE_A.find(([upTo]) => kv <= upTo);
  return row ? row[1] : null;
}
const TABLE_A: readonly (readonly [upToKv: number, ft: number])[] = [
  [50, 10],
  [200, 15],
  [350, 20],
  [500, 25],
  [750, 35],
  [1000, 45],
];

/** Exits, and the clear width of each in inches. */
export type Exits = { readonly exits: number; readonly widthIn: number };

/** Exits and their clear width by occupant load: IFC Table 3103.12.2, 10 to 999. Under 10 the first row is used; above, `null`: ask the fire official. */
export function exitsFor(occupants: number): Exits | null {
  if (occupants < 200) return { exits: 2, widthIn: 72 };
  if (occupants < 500) return { exits: 3, widthIn: 72 };
  return occupants < 1000 ? { exits: 4, widthIn: 96 } : null;
}
