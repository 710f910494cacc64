import type { Place } from "./stand.ts";

/** How a tent is moved as a whole: its middle by whole feet along and off the baseline, and turned about it by whole degrees, clockwise. */
export type Shift = { readonly alongFt: number; readonly offFt: number; readonly turnDeg: number };

/** How far a place is looked for, and what a turn counts beside a shift. */
export type SearchLimits = {
  readonly maxShiftFt: number;
  readonly maxTurnDeg: number;
  /** Feet of shift that a degree of turn counts as. */
  readonly turnCostFtPerDeg: number;
};

/**
 * Usual limits. A degree counts as a foot: about what it moves the corners of a tent 100 ft long. Common practice, no source: the
 * customer wants the tent where it was sold.
 */
export const SEARCH: SearchLimits = { maxShiftFt: 60, maxTurnDeg: 45, turnCostFtPerDeg: 1 };

/**
 * What a shift costs, in feet.
 *
 * @example costFt({ alongFt: 3, offFt: -4, turnDeg: -2 }, 1) // 7
 */
export const costFt = ({ alongFt, offFt, turnDeg }: Shift, turnCostFtPerDeg: number): number =>
  Math.sqrt(alongFt * alongFt + offFt * offFt) + turnCostFtPerDeg * Math.abs(turnDeg);

/**
 * Which of two shifts is tried first: the cheaper; of equal ones the smaller turn, clockwise before the other way; then by the
 * direction of the shift, clockwise from ahead along the baseline.
 *
 * @example inOrder({ alongFt: 1, offFt: 0, turnDeg: 0 }, { alongFt: 0, offFt: 1, turnDeg: 0 }, 1) < 0 // true
 */
export const inOrder = (a: Shift, b: Shift, turnCostFtPerDeg: number): number =>
  costFt(a, turnCostFtPerDeg) - costFt(b, turnCostFtPerDeg) ||
  Math.abs(a.turnDeg) - Math.abs(b.turnDeg) ||
  b.turnDeg - a.turnDeg ||
  byDirection(a, b);

/** Turns in their order: 0, 1, -1, 2, -2 … */
export const turnsTo = (maxTurnDeg: number): number[] =>
  [0, ...Array.from({ length: Math.floor(maxTurnDeg) }, (_, i) => i + 1)].flatMap((deg) => (deg === 0 ? [0] : [deg, -deg]));

/** Shifts without a turn as far as `maxShiftFt`, in their order. */
export function shiftsTo(maxShiftFt: number): Shift[] {
  const most = Math.floor(maxShiftFt);
  // By the square of their length, which is whole: far quicker than to sort them all.
  const rings = Array.from({ length: Math.floor(maxShiftFt * maxShiftFt) + 1 }, (): Shift[] => []);
  for (let alongFt = -most; alongFt <= most; alongFt++)
    for (let offFt = -most; offFt <= most; offFt++) {
      const sq = alongFt * alongFt + offFt * offFt;
      if (sq >= rings.length) continue;
      rings[sq]!.push({ alongFt, offFt, turnDeg: 0 });
    }
  return rings.flatMap((ring) => ring.sort(byDirection));
}

/** A place after a shift. */
export const shifted = ({ middle, headingDeg }: Place, { alongFt, offFt, turnDeg }: Shift): Place => ({
  middle: { xFt: middle.xFt + offFt, yFt: middle.yFt + alongFt },
  headingDeg: headingDeg + turnDeg,
});

/** Clockwise from ahead: first the half with the right hand, then the other. In whole feet, so exact. */
function byDirection(a: Shift, b: Shift): number {
  const half = ({ alongFt, offFt }: Shift): number => (offFt > 0 || (offFt === 0 && alongFt >= 0) ? 0 : 1);
  return half(a) - half(b) || a.offFt * b.alongFt - a.alongFt * b.offFt;
}
