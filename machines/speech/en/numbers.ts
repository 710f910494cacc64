import type { Quantity } from "../quantity.ts";
import { readQuantity } from "./quantities.ts";

/**
 * The quantity in a whole text, if it has exactly one reading; `null` if it has none or several.
 *
 * @example readNumber("five and a half inches") // { n: 5.5, unit: "in" }
 */
export function readNumber(text: string): Quantity | null {
  const [first, ...others] = readQuantity(text);
  return first && others.length === 0 ? first : null;
}
