import { METERS_PER_FOOT, METERS_PER_INCH } from "../../install/checks/units.ts";
import { KM_PER_MILE, KM_PER_NAUTICAL_MILE, NEWTONS_PER_LBF, type Quantity } from "../quantity.ts";

/** A unit under all its names; one of it is `times / over` of what it stands for. Each name is one or more pieces. */
export type Scale<U = Quantity["unit"]> = {
  readonly name: string;
  readonly is: U;
  readonly times: number;
  readonly over: number;
  readonly said: readonly (readonly string[])[];
};
/** The names are given in one string, with a bar between them. */
export const scale = <U>(name: string, is: U, times: number, over: number, said: string): Scale<U> => ({
  name,
  is,
  times,
  over,
  said: said.split("|").map((s) => s.trim().split(" ")),
});

/** Metric lengths come in as the foot or inch they stand for, every speed in mph, every force in lbf. */
export const UNITS: readonly Scale[] = [
  scale("ft", "ft", 1, 1, "feet | foot | ft | '"),
  scale("in", "in", 1, 1, 'inches | inch | in | ins | "'),
  scale("m", "ft", 1, METERS_PER_FOOT, "metres | metre | meters | meter | m"),
  scale("cm", "in", 1, METERS_PER_INCH * 100, "centimetres | centimetre | centimeters | centimeter | cm | cms"),
  scale("mm", "in", 1, METERS_PER_INCH * 1000, "millimetres | millimetre | millimeters | millimeter | mm"),
  scale("deg", "deg", 1, 1, "degrees | degree | deg | °"),
  scale("turns", "turns", 1, 1, "turns | turn"),
  scale("lbf", "lbf", 1, 1, "pounds | pound | lbs | lb | lbf | pounds force | pound force | pounds of force"),
  scale("N", "lbf", 1, NEWTONS_PER_LBF, "newtons | newton | n"),
  scale("kN", "lbf", 1000, NEWTONS_PER_LBF, "kilonewtons | kilonewton | kn"),
  scale("mph", "mph", 1, 1, "mph | m p h | miles an hour | miles per hour | mile an hour | mile per hour"),
  scale("knot", "mph", KM_PER_NAUTICAL_MILE, KM_PER_MILE, "knots | knot | kt | kts | kn"),
  scale(
    "km/h",
    "mph",
    1,
    KM_PER_MILE,
    "kph | k p h | kmh | kmph | km / h | kilometres an hour | kilometres per hour | kilometers an hour | kilometers per hour | kilometre an hour | kilometre per hour | kilometer an hour | kilometer per hour",
  ),
  scale(
    "m/s",
    "mph",
    3.6,
    KM_PER_MILE,
    "m / s | metres a second | metres per second | meters a second | meters per second | metre a second | metre per second | meter a second | meter per second",
  ),
];

/** Every unit whose name starts at a piece, with where the name ends. */
export function unitsAt<U>(t: readonly string[], i: number, units: readonly Scale<U>[]): { unit: Scale<U>; next: number }[] {
  return units.flatMap((unit) =>
    unit.said.filter((name) => name.every((word, k) => t[i + k] === word)).map((name) => ({ unit, next: i + name.length })),
  );
}
