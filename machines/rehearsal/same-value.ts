import type { Value } from "../install/gates.ts";

/** How far what was read may be from what was to be seen, by its unit: as a crew reads. Common practice, no source. */
const WITHIN: Readonly<Record<string, number>> = { in: 0.25, ft: 0.5, deg: 1, lbf: 25, mph: 2 };
/** The same for a tape between corner marks, in feet: a quarter inch. */
const TAPE_FT = 0.25 / 12 + 1e-9;

type Parts = Readonly<Record<string, number | boolean>>;

/** Whether what was answered is what was to be seen, as far as it goes: of an answer in parts, those that were given. */
export function agrees(given: Value, seen: Value): boolean {
  // A paper stands for itself, and "not known" claims nothing.
  if (given.kind === "unknown" || given.kind === "paper") return true;
  if (given.kind === "document" && seen.kind === "document") return plain(given.named) === plain(seen.named);
  if (given.kind === "measure" && seen.kind === "measure") return isNear(given.n, seen.n, WITHIN[given.unit] ?? 0);
  if (given.kind !== seen.kind) return false;
  const within = given.kind === "lengths" ? TAPE_FT : given.kind === "figures" ? (WITHIN[given.unit] ?? 0) : 0;
  const [a, b] = [partsOf(given), partsOf(seen)];
  return Object.entries(a).every(([name, part]) => isNearPart(part, b[name], within));
}

/** Whether two answers are the same, as a crew reads them, all their parts included. */
export const isSameValue = (a: Value, b: Value): boolean => agrees(a, b) && agrees(b, a);

function partsOf(value: Value): Parts {
  switch (value.kind) {
    case "lengths":
      return value.ft;
    case "each":
      return value.yes;
    case "figures":
    case "counts":
      return value.n;
    case "count":
      return { n: value.n };
    case "yesNo":
      return { yes: value.yes };
    default:
      return {};
  }
}

const isNearPart = (a: number | boolean, b: number | boolean | undefined, within: number): boolean =>
  typeof a === "number" && typeof b === "number" ? isNear(a, b, within) : a === b;
const isNear = (a: number, b: number, within: number): boolean => Math.abs(a - b) <= within;
const plain = (named: string): string => named.trim().toLowerCase();
