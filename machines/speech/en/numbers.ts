import type { Unit } from "../../install/gates.ts";
import { readQuantity } from "./quantities.ts";
import type { Quantity } from "./units.ts";

export { readQuantity } from "./quantities.ts";
export { type Clock, readClock } from "./times.ts";
export type { Quantity } from "./units.ts";
export type Wants = Unit | "mph" | "count";

/** The quantity that a whole text says, when it has exactly one reading; `null` when it has none or several. */
export function readNumber(text: string): Quantity | null {
  const [first, ...others] = readQuantity(text);
  return first && others.length === 0 ? first : null;
}

/** The number in the unit that is wanted; a bare number is taken in it. `null` where the unit is another kind of thing. */
export function inUnit({ n, unit }: Quantity, wants: Wants): number | null {
  if (unit === null || unit === wants) return n;
  if (unit === "ft" && wants === "in") return n * 12;
  return unit === "in" && wants === "ft" ? n / 12 : null;
}
