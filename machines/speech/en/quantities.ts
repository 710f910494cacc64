import type { Quantity } from "../quantity.ts";
import { type Amount, amounts, fractions } from "./amounts.ts";
import { digit, isArticle } from "./number-words.ts";
import { tokens } from "./tokens.ts";
import { UNITS, type UnitNames, unitsAt } from "./units.ts";

/** Largest plausible number. */
const MAX_VALUE = 1_000_000;

/** A number with its unit, before conversion. `one` is "a foot"; `assumed` is a bare "foot". */
export type Measure<U = Quantity["unit"]> = {
  readonly n: number;
  readonly unit: UnitNames<U> | null;
  readonly next: number;
  readonly kind: Amount["kind"];
  readonly ft?: true;
  readonly sure?: boolean;
  readonly one?: true;
  readonly assumed?: true;
};

/**
 * Every plausible reading of a whole text as one quantity. Feet with inches are returned in feet, metric lengths in feet or
 * inches, speeds in mph, and forces in lbf. Empty if the text is not a number, says more than a number, or the number is over a
 * million; several distinct readings if it is ambiguous. Takes time at most linear in the length of the text.
 *
 * @example readQuantity("six foot six") // [{ n: 6.5, unit: "ft" }]
 */
export function readQuantity(text: string): readonly Quantity[] {
  const all = tokens(text);
  if (!all || all.length === 0) return [];
  const minus = /^(?:-|minus|negative)$/.test(all[0]!);
  const t = minus ? all.slice(1) : all;
  const found: Quantity[] = [];
  for (const { n, unit } of [
    ...measures(t, 0, UNITS)
      .filter((m) => m.next === t.length && !m.assumed)
      .map(toQuantity),
    ...compoundQuantities(t),
  ]) {
    const signed = minus && n !== 0 ? -n : n;
    if (!(n <= MAX_VALUE) || found.some((f) => f.unit === unit && Math.abs(f.n - signed) <= 1e-9 * Math.max(1, n))) continue;
    found.push({ n: signed, unit });
  }
  return found;
}

const toQuantity = ({ n, unit, ft }: Measure): Quantity => {
  if (n > MAX_VALUE) return { n, unit: null };
  return ft || !unit ? { n, unit: ft ? "ft" : null } : { n: (n * unit.numerator) / unit.denominator, unit: unit.unit };
};

/** Every number with one unit or none that starts at token `i`: "half an inch", "an inch and a half", "three quarters of an inch". */
export function measures<U>(t: readonly string[], i: number, units: readonly UnitNames<U>[]): Measure<U>[] {
  const simple: Measure<U>[] = [
    ...amounts(t, i).flatMap((a) => withUnit(t, a, units)),
    ...(isArticle(t[i]) ? unitsAt(t, i + 1, units).map((u): Measure<U> => ({ ...u, n: 1, kind: "whole", one: true })) : []),
    ...unitsAt(t, i, units).map((u): Measure<U> => ({ ...u, n: 1, kind: "whole", one: true, assumed: true })),
  ];
  return [...simple, ...simple.flatMap((m) => withTrailingFraction(t, m))];
}

function withUnit<U>(t: readonly string[], a: Amount, units: readonly UnitNames<U>[]): Measure<U>[] {
  const { n, kind, onlyIn, ft } = a;
  const base = { n, kind, sure: !onlyIn, ...(ft && { ft }) };
  const direct = unitsAt(t, a.next, units);
  const of = t[a.next] === "of" ? a.next + 1 : a.next;
  const ofOne = isArticle(t[of]) && (kind === "fraction" || (kind === "mixed" && of > a.next)) ? unitsAt(t, of + 1, units) : [];
  const fits = [...direct, ...ofOne].filter(({ unit }) => !onlyIn || unit.name === onlyIn);
  return [{ ...base, unit: null, next: a.next }, ...fits.map((u) => ({ ...base, ...u }))];
}

/**
 * Adds a fraction after the unit: "an inch and a half". After feet the fraction may be of a foot or of an inch, so it returns
 * both readings, except for "a foot and a half".
 */
function withTrailingFraction<U>(t: readonly string[], m: Measure<U>): Measure<U>[] {
  const { unit } = m;
  if (!unit || m.kind !== "whole" || m.sure === false) return [];
  const and = t[m.next] === "and";
  return fractions(t, and ? m.next + 1 : m.next)
    .filter((f) => f.n < 1 && (and || !f.bare))
    .flatMap((f) => {
      const parts = unit.name !== "ft" || (m.one && f.n === 0.5) ? [f.n] : [f.n, f.n / 12];
      return parts.map((p): Measure<U> => ({ n: m.n + p, unit, next: f.next, kind: "mixed" }));
    });
}

/** Two or more measures that form one quantity: feet and inches; meters, centimeters, and millimeters. */
function compoundQuantities(t: readonly string[]): Quantity[] {
  return measures(t, 0, UNITS)
    .filter((m) => m.kind === "whole" && m.sure !== false && !m.assumed && m.n <= MAX_VALUE)
    .flatMap((m): Quantity[] => {
      if (m.unit?.name === "ft") return inchesAfter(t, m);
      const n = m.unit?.name === "m" || m.unit?.name === "cm" ? metricAfter(t, m) : [];
      return n.map((more) => toQuantity({ ...m, n: m.n + more }));
    });
}

/** Index after an optional comma and "and" between two measures. */
function skipJoiner(t: readonly string[], i: number): number {
  const at = t[i] === "," ? i + 1 : i;
  return t[at] === "and" ? at + 1 : at;
}

function inchesAfter(t: readonly string[], feet: Measure): Quantity[] {
  return measures(t, skipJoiner(t, feet.next), UNITS)
    .filter((m) => m.next === t.length && m.n < 12 && m.sure !== false && !m.assumed)
    .filter(({ unit, kind }) => (unit === null ? kind !== "fraction" : unit.name === "in"))
    .map((m) => ({ n: feet.n + m.n / 12, unit: "ft" }));
}

/** What smaller metric units add, as a fraction of the unit before: "2 m 40 cm", "2 m 40", "2 m 40 cm 5 mm". */
function metricAfter(t: readonly string[], before: Measure): number[] {
  const smaller: Readonly<Record<string, number>> = before.unit?.name === "m" ? { cm: 100, mm: 1000 } : { mm: 10 };
  const at = skipJoiner(t, before.next);
  const named = measures(t, at, UNITS)
    .filter((m) => m.sure !== false && !m.assumed && m.unit && m.n < (smaller[m.unit.name] ?? 0))
    .flatMap((m) => {
      const part = smaller[m.unit!.name]!;
      const rest = m.next === t.length ? [0] : m.kind === "whole" && m.unit!.name === "cm" ? metricAfter(t, m) : [];
      return rest.map((more) => (m.n + more) / part);
    });
  return before.unit?.name === "m" ? [...named, ...afterMeters(t, at)] : named;
}

/** A bare number after meters: two digits are centimeters, three are millimeters; one may be 5 cm or 0.5 m, so it returns both. */
function afterMeters(t: readonly string[], i: number): number[] {
  if (/^0\d$/.test(t[i] ?? "") && i + 1 === t.length) return [Number(t[i]) / 100];
  if (/^(?:oh|o|zero|nought|0)$/.test(t[i] ?? "") && i + 2 === t.length) {
    const n = digit(t, i + 1, false);
    return n === null ? [] : [n / 100];
  }
  return amounts(t, i)
    .filter((a) => a.kind === "whole" && a.next === t.length && !a.onlyIn && a.n > 0 && a.n < 1000)
    .flatMap(({ n }) => (n < 10 ? [n / 100, n / 10] : [n < 100 ? n / 100 : n / 1000]));
}
