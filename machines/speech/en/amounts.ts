import { digit, isArticle, type Span, underHundred, type WholeNumber, wholeNumbers } from "./number-words.ts";

/** A number before a unit. `fraction` is a fraction alone; `mixed` is a whole number followed by one. */
export type Amount = WholeNumber & { readonly kind: "whole" | "decimal" | "fraction" | "mixed" };
/**
 * A fraction. A `bare` one needs "and" after a whole number: "a half", and words not in lowest terms, because "twenty two
 * eighths" is more likely twenty-two and an eighth than twenty and two eighths.
 */
export type Fraction = Span & { readonly bare: boolean };

/** Denominators, and the numerators they follow in the singular: people say "three eighth inch" but not "two third". */
const DENOMINATORS: readonly (readonly [under: number, one: string, many: string, singular: (n: number) => boolean])[] = [
  [2, "half", "halves", (n) => n === 1],
  [3, "third", "thirds", (n) => n === 1],
  [4, "quarter", "quarters", (n) => n === 1 || n === 3],
  [4, "fourth", "fourths", (n) => n === 1],
  [5, "fifth", "fifths", (n) => n === 1],
  [6, "sixth", "sixths", (n) => n === 1],
  [8, "eighth", "eighths", (n) => n < 10],
  [10, "tenth", "tenths", (n) => n === 1],
  [12, "twelfth", "twelfths", (n) => n === 1],
  [16, "sixteenth", "sixteenths", (n) => n < 16],
  [32, "thirty second", "thirty seconds", (n) => n < 10],
  [64, "sixty fourth", "sixty fourths", (n) => n === 1],
];

/**
 * Every number that starts at token `i` and can precede a unit: whole, decimal, fraction, mixed, or by the dozen.
 *
 * @example amounts(["five", "and", "a", "half"], 0).map((amount) => amount.n) // [5, 5.5]
 */
export function amounts(t: readonly string[], i: number): Amount[] {
  const whole = wholeNumbers(t, i);
  const plain: Amount[] = [
    ...whole.map((w): Amount => ({ ...w, kind: "whole" })),
    ...decimals(t, i, whole),
    ...[...fractions(t, i), ...fractionsWithLostSpace(t, i)].map(({ n, next }): Amount => ({ n, next, kind: "fraction" })),
    ...whole.flatMap((w) => mixedNumbers(t, w)),
  ];
  return [...plain, ...multiples(t, i, plain)];
}

/**
 * Every fraction that starts at token `i`: "half", "a quarter", "three quarters", "seven sixteenths", "3/8", "3 16ths". In words
 * it is less than two.
 *
 * @example fractions(["three", "quarters"], 0) // [{ n: 0.75, next: 2, bare: false }]
 */
export function fractions(t: readonly string[], i: number): Fraction[] {
  const written = /^(\d+)\/(\d+)$/.exec(t[i] ?? "");
  if (written) {
    const n = Number(written[1]) / Number(written[2]);
    return Number.isFinite(n) ? [{ n, next: i + 1, bare: false }] : [];
  }
  const bare = isArticle(t[i]) ? denominators(t, i + 1, 1) : /^(?:half|quarter)$/.test(t[i] ?? "") ? denominators(t, i, 1) : [];
  return [
    ...bare.map(({ n, next }) => ({ n: 1 / n, next, bare: true })),
    ...underHundred(t, i)
      .flatMap(({ n, next }) => denominators(t, next, n).map((under) => ({ n: n / under.n, next: under.next, bare: gcd(n, under.n) > 1 })))
      .filter(({ n }) => n < 2),
  ];
}

/** Greatest common divisor. */
const gcd = (a: number, b: number): number => (b === 0 ? a : gcd(b, a % b));

function denominators(t: readonly string[], i: number, over: number): Span[] {
  const written = /^(\d+)(?:ths?|nds?)$/.exec(t[i] ?? "");
  if (written)
    return DENOMINATORS.filter(([under]) => under === Number(written[1]))
      .map(([n]) => ({ n, next: i + 1 }))
      .slice(0, 1);
  return DENOMINATORS.flatMap(([under, one, many, singular]) => {
    const two = one.includes(" ");
    const name = two ? `${t[i]} ${t[i + 1]}` : t[i];
    return name === many || (name === one && singular(over)) ? [{ n: under, next: i + (two ? 2 : 1) }] : [];
  });
}

/** "51/2" may be 5 1/2 with its space lost: every such reading of an improper fraction in digits. */
function fractionsWithLostSpace(t: readonly string[], i: number): Span[] {
  const written = /^(\d{2,6})\/(\d{1,2})$/.exec(t[i] ?? "");
  if (!written) return [];
  const [over, under] = [written[1]!, Number(written[2])];
  if (Number(over) < under) return [];
  return [...over].flatMap((first, k) => {
    const part = Number(over.slice(k));
    return k > 0 && first !== "0" && part < under ? [{ n: Number(over.slice(0, k)) + part / under, next: i + 1 }] : [];
  });
}

/** "7.5", "seven point two five", "seven point twenty-five", "point five". */
function decimals(t: readonly string[], i: number, whole: readonly WholeNumber[]): Amount[] {
  if (/^\d*\.\d+$/.test(t[i] ?? "")) return [{ n: Number(t[i]), next: i + 1, kind: "decimal" }];
  const starts: WholeNumber[] = [...whole.filter((w) => !w.onlyIn), { n: 0, next: i }];
  return starts
    .filter(({ next }) => t[next] === "point")
    .flatMap(({ n, next }) =>
      decimalDigits(t, next + 1).map((p): Amount => ({ n: Number(`${n}.${p.digits}`), next: p.next, kind: "decimal" })),
    );
}

function decimalDigits(t: readonly string[], i: number): { digits: string; next: number }[] {
  let digits = "";
  let next = i;
  for (let d = digit(t, next, true); d !== null; d = digit(t, next, true)) {
    digits += d;
    next += 1;
  }
  if (digits !== "") return [{ digits, next }];
  if (/^\d+$/.test(t[i] ?? "")) return [{ digits: t[i]!, next: i + 1 }];
  return underHundred(t, i).map((s) => ({ digits: String(s.n), next: s.next }));
}

function mixedNumbers(t: readonly string[], w: WholeNumber): Amount[] {
  const and = t[w.next] === "and";
  return fractions(t, and ? w.next + 1 : w.next)
    .filter((f) => f.n < 1 && (and || !f.bare) && w.onlyIn !== "m")
    .map((f): Amount => ({ ...w, n: w.n + (w.ft ? f.n / 12 : f.n), next: f.next, kind: "mixed" }));
}

/** "a dozen", "half a dozen", "two dozen"; "two and a half thousand". */
function multiples(t: readonly string[], i: number, plain: readonly Amount[]): Amount[] {
  const one = isArticle(t[i]) ? i + 1 : i;
  const dozen: Amount[] = t[one] === "dozen" ? [{ n: 12, next: one + 1, kind: "whole" }] : [];
  return [
    ...dozen,
    ...plain
      .filter((a) => !a.onlyIn)
      .flatMap(({ n, next, kind }): Amount[] => {
        const of = kind === "fraction" && isArticle(t[next]) ? next + 1 : next;
        if (t[of] === "dozen" && n < 100) return [{ n: n * 12, next: of + 1, kind: "whole" }];
        return kind !== "whole" && of === next && t[of] === "thousand" ? [{ n: n * 1000, next: of + 1, kind: "whole" }] : [];
      }),
  ];
}
