import type { Sheet } from "./brief.ts";

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

/** What may show above ground, in inches: never over 6 by default (common practice, no source), less where the sheet wants more in the ground. */
export const maxShowingIn = ({ stakeLengthIn, embedmentIn }: Sheet): number =>
  Math.min(6, embedmentIn === null ? 6 : stakeLengthIn - embedmentIn);

/** Degrees off plumb, away from the tent: 0 to 10 unless the sheet says otherwise. Common practice, no source. */
export const stakeLeanDeg = (sheet: Sheet) => sheet.stakeLeanDeg ?? { from: 0, to: 10 };

/** Squaring tolerance in inches for every 50 ft of the length measured, unless the sheet says otherwise. A design default, no published source. */
export const SQUARE_IN_PER_50_FT = 1;

/** Lean of a side pole in degrees. 1° is 1 5/8 in over 8 ft. Common practice, no source. */
export const sidePoleLeanDeg = (sheet: Sheet): number => sheet.sidePoleLeanDeg ?? 1;

/** Fewest turns of strap on a ratchet's spindle before it takes load. Common practice, no source. */
export const MIN_TURNS = 2;

/** Gusts in mph: raising stops at the first, everything stops at the second. The sheet governs; no published limit for raising was found. */
export const windLimits = (sheet: Sheet) => ({ raiseGustMph: sheet.raiseGustMph ?? 20, stopGustMph: sheet.stopGustMph ?? 25 });

/** How long a wind reading is good for, in seconds: 10 minutes while poles go up or come down, 30 otherwise. Common practice, no source. */
export const WIND_VALID_S = { raising: 600, otherwise: 1800 } as const;

/** Seconds that work stays stopped after the last thunder: 30 minutes. US National Weather Service guidance. */
export const THUNDER_S = 1800;

/** Exits and their clear width in inches by occupant load: IFC Table 3103.12.2, 10 to 999. Under 10 the first row is used; above, `null`: ask the fire official. */
export function exitsFor(occupants: number): { exits: number; widthIn: number } | null {
  if (occupants < 200) return { exits: 2, widthIn: 72 };
  if (occupants < 500) return { exits: 3, widthIn: 72 };
  return occupants < 1000 ? { exits: 4, widthIn: 96 } : null;
}

/** Exit signs are wanted from this occupant load on: the fire code as cities adopt it. */
export const EXIT_SIGNS_FROM = 50;

/** Longest walk to an extinguisher, in feet: city fire rules for tents. */
export const EXTINGUISHER_FT = 75;
