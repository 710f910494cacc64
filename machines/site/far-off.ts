import { CORNERS, type Corner } from "../tent/types.ts";
import { LENGTHS, type LengthName, type Lengths, lengthFt, type Marks } from "./lengths.ts";

/** What lengths that are far from the wanted figure may be instead: another unit, corners named another way, or nobody knows. */
export type FarOff =
  | { readonly is: "units"; readonly unit: "m" | "in" | "yd" }
  | { readonly is: "corners"; readonly are: Readonly<Record<Corner, Corner>> }
  | { readonly is: "swapped"; readonly names: readonly [LengthName, LengthName] }
  | { readonly is: "unknown"; readonly lengths: readonly FarLength[] };

/** A length that is nowhere near what is wanted. */
export type FarLength = { readonly name: LengthName; readonly readFt: number; readonly wantFt: number };

/** Farther off than this share of what is wanted, another unit or other corners are looked for. Common practice, no source. */
const FAR = 0.1;
/** Farther than this, nobody laid the marks so, whatever was measured. Common practice, no source. */
const NOWHERE_NEAR = 0.25;
/** So near to the wanted figure is as good as it, as a share. Common practice, no source. */
const NEAR = 0.03;
/** Feet in a unit that may have been read off instead: the international foot is 0.3048 m. */
const UNITS = [
  { unit: "m", ft: 1 / 0.3048 },
  { unit: "in", ft: 1 / 12 },
  { unit: "yd", ft: 3 },
] as const;

/** Whether at least two lengths are far from what is wanted, and what explains that, or which they are; `null` where they are not. */
export function farOff(lengths: Lengths, want: Marks): FarOff | null {
  const wantFt = (name: LengthName) => lengthFt(want, name);
  const names = LENGTHS.filter((name) => lengths[name] !== undefined);
  const isNear = (ft: number, name: LengthName) => Math.abs(ft - wantFt(name)) <= NEAR * wantFt(name);
  const shareOff = (name: LengthName) => Math.abs(lengths[name]! - wantFt(name)) / wantFt(name);
  const offBy = (share: number) => names.filter((name) => shareOff(name) > share);
  if (offBy(FAR).length < 2) return null;
  const scaled = UNITS.find(({ ft }) => names.every((name) => isNear(lengths[name]! * ft, name)));
  if (scaled) return { is: "units", unit: scaled.unit };
  for (const [i, a] of names.entries())
    for (const b of names.slice(i + 1))
      if (names.every((name) => isNear(lengths[name === a ? b : name === b ? a : name]!, name))) return { is: "swapped", names: [a, b] };
  const renamed = ORDERS.find((are) =>
    names.every((name) => isNear(lengths[name]!, between(are[name[0] as Corner], are[name[1] as Corner]))),
  );
  if (renamed) return { is: "corners", are: renamed };
  const nowhere = offBy(NOWHERE_NEAR).sort((a, b) => shareOff(b) - shareOff(a));
  if (nowhere.length < 2) return null;
  return { is: "unknown", lengths: nowhere.map((name) => ({ name, readFt: lengths[name]!, wantFt: wantFt(name) })) };
}

/** The length between two corners, whichever comes first. */
const between = (a: Corner, b: Corner): LengthName => LENGTHS.find((name) => name.includes(a) && name.includes(b))!;

/** Every way of naming four corners but the right one. */
const ORDERS: readonly Readonly<Record<Corner, Corner>>[] = ordersOf(CORNERS)
  .slice(1)
  .map(([A, B, C, D]) => ({ A: A!, B: B!, C: C!, D: D! }));

function ordersOf(of: readonly Corner[]): Corner[][] {
  if (of.length === 0) return [[]];
  return of.flatMap((first) => ordersOf(of.filter((corner) => corner !== first)).map((rest) => [first, ...rest]));
}
