import type { Amount, AmountUnit } from "../../../machines/figures/line.ts";
import type { LoadFormula, LoadInputName } from "../../../machines/loads/lines.ts";
import { own } from "../../../machines/lookup/own.ts";

/** What a figure of the loads is: what came out of a formula, or what went into one. */
export type LoadFigure = LoadFormula | LoadInputName;

/** What holds a load, or makes it less: more of it would be kinder. To a tenth of a pound, as these are small beside loads. */
const KINDER_IF_MORE: ReadonlySet<LoadFigure> = new Set([
  "capacityFromPulls", "capacityFromTable", "wetGround", "lowestPull", "dry", "factor", "friction", "pulls", "stakes", "plates",
  "stakesAllowed", "elevation", "embedded", "stakeDiameter", "stakeLength", "perimeter",
]); // biome-ignore format: a list
/** Lengths that a load grows with; other lengths and angles are kinder neither way, and go to the nearest. */
const STRICTER_IF_MORE: ReadonlySet<LoadFigure> = new Set(["tributaryEdge", "edge", "rise", "height"]);

/** Digits after the point: pounds and feet need no thousandths. */
const DIGITS: Readonly<Partial<Record<AmountUnit, number>>> = { lbf: 0, lb: 0, psf: 2, number: 3 };
const NOISE = 1e-6;

/**
 * A figure with as many digits as a person reads, on the stricter side: a load up, a capacity down.
 *
 * @example roundedStrictly({ n: 326.1, unit: "lbf" }, "perStake") // 327
 * @example roundedStrictly({ n: 426.667, unit: "lbf" }, "capacityFromPulls") // 426.6
 */
export function roundedStrictly({ n, unit }: Amount, of?: LoadFigure): number {
  const down = of !== undefined && KINDER_IF_MORE.has(of);
  const digits = down && unit === "lbf" ? 1 : (own(DIGITS, unit) ?? 1);
  const scaled = n * 10 ** digits;
  if (down) return Math.floor(scaled + NOISE) / 10 ** digits;
  const isLength = unit === "ft" || unit === "in" || unit === "deg";
  if (isLength && !(of !== undefined && STRICTER_IF_MORE.has(of))) return Math.round(scaled) / 10 ** digits;
  return Math.ceil(scaled - NOISE) / 10 ** digits;
}
