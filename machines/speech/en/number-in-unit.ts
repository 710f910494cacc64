import type { Meaning } from "../meanings.ts";
import type { Wants } from "../quantity.ts";
import { inUnit } from "../quantity.ts";
import { readQuantity } from "./quantities.ts";

/**
 * One number in the wanted unit, or why there is none: no number, several readings, or a unit of another kind.
 *
 * @example numberInUnit("two feet", "in") // { n: 24 }
 */
export function numberInUnit(text: string, wants: Wants): { readonly n: number } | Meaning {
  const readings = readQuantity(text);
  if (readings.length === 0) return { notUnderstood: true };
  const fitting = [...new Set(readings.flatMap((r) => inUnit(r, wants) ?? []).map((n) => Math.round(n * 1e6) / 1e6))];
  const [n] = fitting;
  if (n === undefined) return { wrongUnit: { gave: readings[0]!.unit ?? "", wants } };
  return fitting.length === 1 ? { n } : { ambiguous: { n: fitting, unit: wants } };
}
