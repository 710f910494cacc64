/** A number read from one piece up to, but not with, another. */
export type Span = { readonly n: number; readonly next: number };
/**
 * A whole number. One that is only a guess among others says the unit it makes sense with, besides none: "six two" is
 * 62 or 6 ft 2 where inches follow or nothing does. With `ft` the guess is in feet whatever unit follows.
 */
export type Whole = Span & { readonly onlyIn?: "in" | "m"; readonly ft?: true };
type Small = Span & { readonly kind: "digit" | "teen" | "tens" | "both"; readonly word: boolean };

const ONES = new Map("one two three four five six seven eight nine".split(" ").map((w, i) => [w, i + 1]));
const TEENS = new Map(
  "ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen".split(" ").map((w, i) => [w, i + 10]),
);
const TENS = new Map("twenty thirty forty fifty sixty seventy eighty ninety".split(" ").map((w, i) => [w, i * 10 + 20]));
const ZEROS = new Set(["zero", "nought", "naught", "nil"]);
const isArticle = (word: string | undefined) => word === "a" || word === "an";

export { isArticle };

/** Every number from 1 to 99 that starts at a piece, in words or digits: at "twenty eight" both 20 and 28. */
export function underHundred(t: readonly string[], i: number): Small[] {
  const word = t[i] ?? "";
  const one = ONES.get(word);
  if (one !== undefined) return [{ n: one, next: i + 1, kind: "digit", word: true }];
  const teen = TEENS.get(word);
  if (teen !== undefined) return [{ n: teen, next: i + 1, kind: "teen", word: true }];
  const tens = TENS.get(word);
  if (tens !== undefined) {
    const more = ONES.get(t[i + 1] ?? "");
    const alone: Small = { n: tens, next: i + 1, kind: "tens", word: true };
    return more === undefined ? [alone] : [alone, { n: tens + more, next: i + 2, kind: "both", word: true }];
  }
  if (!/^[1-9]\d?$/.test(word)) return [];
  const n = Number(word);
  return [{ n, next: i + 1, kind: n < 10 ? "digit" : n < 20 ? "teen" : n % 10 === 0 ? "tens" : "both", word: false }];
}

/** One digit, 0 to 9, as a word or a digit; "oh" only where it stands inside a run. `null` where there is none. */
export function digit(t: readonly string[], i: number, inside: boolean): number | null {
  const word = t[i] ?? "";
  if (/^\d$/.test(word)) return Number(word);
  if (ZEROS.has(word) || (inside && (word === "oh" || word === "o"))) return 0;
  return ONES.get(word) ?? null;
}

/** Every whole number, 0 to 999,999, that starts at a piece, however it is said. Bounded work: the pieces are few. */
export function wholeNumbers(t: readonly string[], i: number): Whole[] {
  const word = t[i] ?? "";
  const zero = ZEROS.has(word) || (word === "none" && t.length === 1) ? [{ n: 0, next: i + 1 }] : [];
  const digits = /^\d+$/.test(word) ? [{ n: Number(word), next: i + 1 }] : [];
  return [...zero, ...digits, ...thousands(t, i), ...runs(t, i), ...pairs(t, i)];
}

/** "eight", "a hundred and twenty-eight", "twelve hundred", "8 hundred": up to 9,999. */
function hundreds(t: readonly string[], i: number): Span[] {
  const firsts = underHundred(t, i);
  const large = /^[1-9]\d\d$/.test(t[i] ?? "") ? [{ n: Number(t[i]), next: i + 1 }] : [];
  const counts: Span[] = [...firsts, ...oneBefore(t, i, "hundred")];
  const scaled = counts.filter(({ next }) => t[next] === "hundred");
  return [...firsts, ...large, ...scaled.flatMap(({ n, next }) => andMore(t, { n: n * 100, next: next + 1 }, underHundred))];
}

/** "two thousand five hundred", "a thousand and one"; the rest after "thousand" is under a thousand. */
function thousands(t: readonly string[], i: number): Span[] {
  const firsts = hundreds(t, i);
  const counts: Span[] = [...firsts.filter(({ n }) => n < 1000), ...oneBefore(t, i, "thousand")];
  const under = (from: readonly string[], at: number) => (from[at] === "hundred" ? [] : hundreds(from, at).filter(({ n }) => n < 1000));
  const scaled = counts.filter(({ next }) => t[next] === "thousand");
  return [
    ...firsts,
    ...scaled.flatMap(({ n, next }) => {
      const whole = { n: n * 1000, next: next + 1 };
      return t[whole.next] === "," ? [whole, ...andMore(t, { ...whole, next: whole.next + 1 }, under).slice(1)] : andMore(t, whole, under);
    }),
  ];
}

/** The one that is meant by "a hundred" and by a bare "hundred". */
function oneBefore(t: readonly string[], i: number, name: string): Span[] {
  if (t[i] === name) return [{ n: 1, next: i }];
  return isArticle(t[i]) && t[i + 1] === name ? [{ n: 1, next: i + 1 }] : [];
}

function andMore(t: readonly string[], whole: Span, rest: (t: readonly string[], i: number) => Span[]): Span[] {
  const from = t[whole.next] === "and" ? whole.next + 1 : whole.next;
  return [whole, ...rest(t, from).map(({ n, next }) => ({ n: whole.n + n, next }))];
}

/** Digit by digit: three to six of them, not from a zero. */
function runs(t: readonly string[], i: number): Span[] {
  const found: Span[] = [];
  let n = digit(t, i, false) ?? 0;
  if (n === 0) return [];
  for (let next = i + 1; next < i + 6; next++) {
    const more = digit(t, next, true);
    if (more === null) break;
    n = n * 10 + more;
    if (next >= i + 2) found.push({ n, next: next + 1 });
  }
  return found;
}

/**
 * Two numbers side by side. In words the second one's tens make hundreds of the first: "one twenty eight" is 128; but
 * "two fifty" may also be 2.50 and "six ten" 6 ft 10. Two single digits, and two numbers in digits ("20 8"), are never sure.
 */
function pairs(t: readonly string[], i: number): Whole[] {
  return underHundred(t, i).flatMap((a) => [...underHundred(t, a.next), ...zeroDigit(t, a.next)].flatMap((b) => pair(a, b)));
}

const zeroDigit = (t: readonly string[], i: number): Small[] =>
  digit(t, i, false) === 0 ? [{ n: 0, next: i + 1, kind: "digit", word: t[i] !== "0" }] : [];

function pair(a: Small, b: Small): Whole[] {
  const { next } = b;
  const words = a.word && b.word;
  const joined = { n: a.kind === "tens" && b.n < 10 && b.n > 0 ? a.n + b.n : a.n * (b.n < 10 ? 10 : 100) + b.n, next };
  const feet: Whole[] = b.n < 12 ? [{ n: a.n + b.n / 12, next, onlyIn: "in", ft: true }] : [];
  const decimal: Whole[] = b.n >= 10 ? [{ n: a.n + b.n / 100, next, onlyIn: "m" }] : [];
  if (!words || (a.kind === "digit" && b.kind === "digit"))
    return feet.length > 0 ? [{ ...joined, onlyIn: "in" }, ...feet] : [{ ...joined, onlyIn: "m" }, ...decimal];
  if (b.n < 10) return [];
  return a.kind === "digit" && b.kind === "both" ? [joined] : [joined, ...decimal, ...feet];
}
