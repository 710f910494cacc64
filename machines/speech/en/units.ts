import { METERS_PER_FOOT, METERS_PER_INCH } from "../../install/checks/units.ts";
import { KM_PER_MILE, KM_PER_NAUTICAL_MILE, NEWTONS_PER_LBF, type Quantity } from "../quantity.ts";

/** A unit and its names. One of it is `numerator / denominator` of `unit`. Each name is a list of one or more tokens. */
export type UnitNames<U = Quantity["unit"]> = {
  readonly name: string;
  readonly unit: U;
  readonly numerator: number;
  readonly denominator: number;
  readonly names: readonly (readonly string[])[];
};
/** The names are given in one string, separated by bars. */
export const unitNames = <U>(name: string, unit: U, numerator: number, denominator: number, names: string): UnitNames<U> => ({
  name,
  unit,
  numerator,
  denominator,
  names: names.split("|").map((s) => s.trim().split(" ")),
});

/** Metric lengths are converted to feet or inches, speeds to mph, and forces to lbf. */
export const UNITS: readonly UnitNames[] = [
  unitNames("ft", "ft", 1, 1, "feet | foot | ft | '"),
  unitNames("in", "in", 1, 1, 'inches | inch | in | ins | "'),
  unitNames("m", "ft", 1, METERS_PER_FOOT, "metres | metre | meters | meter | m"),
  unitNames("cm", "in", 1, METERS_PER_INCH * 100, "centimetres | centimetre | centimeters | centimeter | cm | cms"),
  unitNames("mm", "in", 1, METERS_PER_INCH * 1000, "millimetres | millimetre | millimeters | millimeter | mm"),
  unitNames("deg", "deg", 1, 1, "degrees | degree | deg | °"),
  unitNames("turns", "turns", 1, 1, "turns | turn"),
  unitNames("lbf", "lbf", 1, 1, "pounds | pound | lbs | lb | lbf | pounds force | pound force | pounds of force"),
  unitNames("N", "lbf", 1, NEWTONS_PER_LBF, "newtons | newton | n"),
  unitNames("kN", "lbf", 1000, NEWTONS_PER_LBF, "kilonewtons | kilonewton | kn"),
  unitNames("mph", "mph", 1, 1, "mph | m p h | miles an hour | miles per hour | mile an hour | mile per hour"),
  unitNames("knot", "mph", KM_PER_NAUTICAL_MILE, KM_PER_MILE, "knots | knot | kt | kts | kn"),
  unitNames(
    "km/h",
    "mph",
    1,
    KM_PER_MILE,
    "kph | k p h | kmh | kmph | km / h | kilometres an hour | kilometres per hour | kilometers an hour | kilometers per hour | kilometre an hour | kilometre per hour | kilometer an hour | kilometer per hour",
  ),
  unitNames(
    "m/s",
    "mph",
    3.6,
    KM_PER_MILE,
    "m / s | metres a second | metres per second | meters a second | meters per second | metre a second | metre per second | meter a second | meter per second",
  ),
];

/** Every unit whose name starts at token `i`, with the index of the token after the name. */
export function unitsAt<U>(t: readonly string[], i: number, units: readonly UnitNames<U>[]): { unit: UnitNames<U>; next: number }[] {
  return units.flatMap((unit) =>
    unit.names.filter((name) => name.every((word, k) => t[i + k] === word)).map((name) => ({ unit, next: i + name.length })),
  );
}
