/** A number, and the index of the token after it. */
export type Span = { readonly n: number; readonly next: number };
/**
 * A whole number. If it is one of several possible readings, `onlyIn` is the unit it makes sense with, besides none: "six two" is
 * 62 or 6 ft 2 in if inches or no unit follow. With `ft` the reading is in feet whatever unit follows.
 */
export type WholeNumber = Span & { readonly onlyIn?: "in" | "m"; readonly ft?: true };
type SmallNumber = Span & { readonly kind: "digit" | "teen" | "tens" | "both"; readonly word: boolean };

const ONES = new Map("one two three four five six seven eight nine".split(" ").map((w, i) => [w, i + 1]));
const TEENS = new Map(
  "ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen".split(" ").map((w, i) => [w, i + 10]),
);
const TENS = new Map("twenty thirty forty fifty sixty seventy eighty ninety".split(" ").map((w, i) => [w, i * 10 + 20]));
const ZEROS = new Set(["zero", "nought", "naught", "nil"]);
const isArticle = (word: string | undefined) => word === "a" || word === "an";

export { isArticle };

/**
 * Every number from 1 to 99 that starts at token `i`, in words or digits: both 20 and 28 for "twenty eight".
 *
 * @example underHundred(["twenty", "eight"], 0).map((number) => number.n) // [20, 28]
 */
export function underHundred(t: readonly string[], i: number): SmallNumber[] {
  const word = t[i] ?? "";
  const one = ONES.get(word);
  if (one !== undefined) return [{ n: one, next: i + 1, kind: "digit", word: true }];
  const teen = TEENS.get(word);
  if (teen !== undefined) return [{ n: teen, next: i + 1, kind: "teen", word: true }];
  const tens = TENS.get(word);
  if (tens !== undefined) {
    const more = ONES.get(t[i + 1] ?? "");
    const alone: SmallNumber = { n: tens, next: i + 1, kind: "tens", word: true };
    return more === undefined ? [alone] : [alone, { n: tens + more, next: i + 2, kind: "both", word: true }];
  }
  if (!/^[1-9]\d?$/.test(word)) return [];
  const n = Number(word);
  return [{ n, next: i + 1, kind: n < 10 ? "digit" : n < 20 ? "teen" : n % 10 === 0 ? "tens" : "both", word: false }];
}

/**
 * One digit, 0 to 9, as a word or a digit; "oh" counts only `inside` a run of digits. `null` if there is none.
 *
 * @example digit(["six", "oh", "five"], 1, true) // 0
 */
export function digit(t: readonly string[], i: number, inside: boolean): number | null {
  const word = t[i] ?? "";
  if (/^\d$/.test(word)) return Number(word);
  if (ZEROS.has(word) || (inside && (word === "oh" || word === "o"))) return 0;
  return ONES.get(word) ?? null;
}

/**
 * Every whole number, 0 to 999,999, that starts at token `i`, however it is said. The work is bounded because tokens are few.
 *
 * @example wholeNumbers(["twelve", "hundred"], 0).map((number) => number.n) // [12, 1200]
 */
export function wholeNumbers(t: readonly string[], i: number): WholeNumber[] {
  const word = t[i] ?? "";
  const zero = ZEROS.has(word) || (word === "none" && t.length === 1) ? [{ n: 0, next: i + 1 }] : [];
  const digits = /^\d+$/.test(word) ? [{ n: Number(word), next: i + 1 }] : [];
  return [...zero, ...digits, ...thousands(t, i), ...digitRuns(t, i), ...pairs(t, i)];
}

/** "eight", "a hundred and twenty-eight", "twelve hundred", "8 hundred": up to 9,999. */
function hundreds(t: readonly string[], i: number): Span[] {
  const firsts = underHundred(t, i);
  const large = /^[1-9]\d\d$/.test(t[i] ?? "") ? [{ n: Number(t[i]), next: i + 1 }] : [];
  const counts: Span[] = [...firsts, ...impliedOne(t, i, "hundred")];
  const scaled = counts.filter(({ next }) => t[next] === "hundred");
  return [...firsts, ...large, ...scaled.flatMap(({ n, next }) => withRemainder(t, { n: n * 100, next: next + 1 }, underHundred))];
}

/** "two thousand five hundred", "a thousand and one"; what follows "thousand" is less than a thousand. */
function thousands(t: readonly string[], i: number): Span[] {
  const firsts = hundreds(t, i);
  const counts: Span[] = [...firsts.filter(({ n }) => n < 1000), ...impliedOne(t, i, "thousand")];
  const under = (from: readonly string[], at: number) => (from[at] === "hundred" ? [] : hundreds(from, at).filter(({ n }) => n < 1000));
  const scaled = counts.filter(({ next }) => t[next] === "thousand");
  return [
    ...firsts,
    ...scaled.flatMap(({ n, next }) => {
      const whole = { n: n * 1000, next: next + 1 };
      return t[whole.next] === ","
        ? [whole, ...withRemainder(t, { ...whole, next: whole.next + 1 }, under).slice(1)]
        : withRemainder(t, whole, under);
    }),
  ];
}

/** The implied one in "a hundred" and in a bare "hundred". */
function impliedOne(t: readonly string[], i: number, name: string): Span[] {
  if (t[i] === name) return [{ n: 1, next: i }];
  return isArticle(t[i]) && t[i + 1] === name ? [{ n: 1, next: i + 1 }] : [];
}

function withRemainder(t: readonly string[], whole: Span, rest: (t: readonly string[], i: number) => Span[]): Span[] {
  const from = t[whole.next] === "and" ? whole.next + 1 : whole.next;
  return [whole, ...rest(t, from).map(({ n, next }) => ({ n: whole.n + n, next }))];
}

/** Numbers said digit by digit: three to six digits, not starting with zero. */
function digitRuns(t: readonly string[], i: number): Span[] {
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
 * Two adjacent numbers. In words, tens in the second turn the first into hundreds: "one twenty eight" is 128; but "two fifty" may
 * also be 2.50, and "six ten" 6 ft 10 in. Two single digits, and two numbers in digits ("20 8"), are always ambiguous.
 */
function pairs(t: readonly string[], i: number): WholeNumber[] {
  return underHundred(t, i).flatMap((a) => [...underHundred(t, a.next), ...zeroDigit(t, a.next)].flatMap((b) => pair(a, b)));
}

const zeroDigit = (t: readonly string[], i: number): SmallNumber[] =>
  digit(t, i, false) === 0 ? [{ n: 0, next: i + 1, kind: "digit", word: t[i] !== "0" }] : [];

function pair(a: SmallNumber, b: SmallNumber): WholeNumber[] {
  const { next } = b;
  const words = a.word && b.word;
  const joined = { n: a.kind === "tens" && b.n < 10 && b.n > 0 ? a.n + b.n : a.n * (b.n < 10 ? 10 : 100) + b.n, next };
  const feet: WholeNumber[] = b.n < 12 ? [{ n: a.n + b.n / 12, next, onlyIn: "in", ft: true }] : [];
  const decimal: WholeNumber[] = b.n >= 10 ? [{ n: a.n + b.n / 100, next, onlyIn: "m" }] : [];
  if (!words || (a.kind === "digit" && b.kind === "digit"))
    return feet.length > 0 ? [{ ...joined, onlyIn: "in" }, ...feet] : [{ ...joined, onlyIn: "m" }, ...decimal];
  if (b.n < 10) return [];
  return a.kind === "digit" && b.kind === "both" ? [joined] : [joined, ...decimal, ...feet];
}
