import { toCardinal as british } from "n2words/en-GB";
import { toCardinal as american } from "n2words/en-US";
import { toWords } from "to-words/en-US";
import { describe, expect, it } from "vitest";
import { readingsIn } from "../../machines/speech/en/number-in-unit.ts";
import type { Wants } from "../../machines/speech/quantity.ts";

// What crews say of numbers beyond the words for them is a table of our own: common practice, no source. The words themselves are by two
// libraries that know nothing of it.

/** So many phrases of each form. */
const PHRASES = 20_000;
/** So many of a hundred are to be right at once; the rest is asked again. */
const AT_ONCE_PERCENT = 90;

type Form = {
  readonly wants: Wants;
  /** The n-th phrase, and the number that it stands for in that unit. */
  readonly say: (n: number) => readonly [phrase: string, is: number];
};

/** Numbers in an order that jumps over all of a range: 7919 is prime. */
const upTo = (max: number, n: number): number => (n * 7919) % (max + 1);
const libraries = [american, british, (n: number) => toWords(n).toLowerCase(), (n: number) => american(n).replaceAll("-", " ")];
/** In the words of one library after the other. */
const words = (value: number, n: number): string => libraries[n % libraries.length]!(value);

const EIGHTHS = ["", "an eighth", "a quarter", "three eighths", "a half", "five eighths", "three quarters", "seven eighths"];
const SIXTEENTHS = Array.from({ length: 16 }, (_, k) =>
  k % 2 === 0 ? EIGHTHS[k / 2]! : k === 1 ? "a sixteenth" : `${american(k)} sixteenths`,
);
const WRITTEN = ["", "1/8", "1/4", "3/8", "1/2", "5/8", "3/4", "7/8"];

const FORMS: Readonly<Record<string, Form>> = {
  "a count in words": { wants: "count", say: (n) => [words(upTo(9999, n), n), upTo(9999, n)] },
  "a count in digits": {
    wants: "count",
    say: (n) => [n % 2 ? upTo(9999, n).toLocaleString("en-US") : String(upTo(9999, n)), upTo(9999, n)],
  },
  "a count in pairs: one twenty-eight": {
    wants: "count",
    say: (n) => {
      const [high, low] = [1 + upTo(98, n), 10 + upTo(89, Math.floor(n / 99))];
      return [`${american(high)} ${words(low, n)}`, high * 100 + low];
    },
  },
  "a count with oh: one oh four": {
    wants: "count",
    say: (n) => {
      const [high, low] = [1 + upTo(8, n), 1 + upTo(8, Math.floor(n / 9))];
      return [`${american(high)} oh ${american(low)}`, high * 100 + low];
    },
  },
  dozens: { wants: "count", say: (n) => [`${words(2 + upTo(97, n), n)} dozen`, 12 * (2 + upTo(97, n))] },
  inches: { wants: "in", say: (n) => [`${words(upTo(999, n), n)} inches`, upTo(999, n)] },
  "inches and a fraction": {
    wants: "in",
    say: (n) => {
      const [whole, part] = [1 + upTo(199, n), 1 + upTo(14, Math.floor(n / 200))];
      return [`${words(whole, n)} and ${SIXTEENTHS[part]} inches`, whole + part / 16];
    },
  },
  "inches and a half, without the unit": {
    wants: "in",
    say: (n) => {
      const [whole, part] = [1 + upTo(199, n), 1 + upTo(6, Math.floor(n / 200))];
      return [`${words(whole, n)} and ${EIGHTHS[part]}`, whole + part / 8];
    },
  },
  "inches as they are written": {
    wants: "in",
    say: (n) => {
      const [whole, part] = [1 + upTo(199, n), 1 + upTo(6, Math.floor(n / 200))];
      return [`${whole} ${WRITTEN[part]}${n % 2 ? '"' : " in"}`, whole + part / 8];
    },
  },
  feet: { wants: "ft", say: (n) => [`${words(upTo(999, n), n)} ${n % 2 ? "feet" : "foot"}`, upTo(999, n)] },
  "feet and inches: six foot two": {
    wants: "ft",
    say: (n) => {
      const [ft, inches] = [1 + upTo(299, n), 1 + upTo(10, Math.floor(n / 300))];
      return [`${words(ft, n)} ${n % 2 ? "foot" : "feet"} ${american(inches)}${n % 3 ? " inches" : ""}`, ft + inches / 12];
    },
  },
  "feet, inches and a fraction: hundred and twenty foot six and a quarter": {
    wants: "ft",
    say: (n) => {
      const [ft, inches, part] = [1 + upTo(299, n), 1 + upTo(10, n), 1 + upTo(6, Math.floor(n / 300))];
      return [`${words(ft, n)} foot ${american(inches)} and ${EIGHTHS[part]}${n % 2 ? " inches" : ""}`, ft + (inches + part / 8) / 12];
    },
  },
  "feet and inches as they are written": {
    wants: "ft",
    say: (n) => {
      const [ft, inches] = [1 + upTo(299, n), 1 + upTo(10, Math.floor(n / 300))];
      return [[`${ft}' ${inches}"`, `${ft} ft ${inches} in`, `${ft}'-${inches}"`, `${ft} feet ${inches} inches`][n % 4]!, ft + inches / 12];
    },
  },
  "digits with their unit, as recognizers write them": {
    wants: "ft",
    say: (n) => {
      const ft = (1 + upTo(2999, n)) / 10;
      return [[`${ft}ft`, `${ft} ft.`, `${ft} feet`, `${ft}'`, `${ft} foot`][n % 5]!, ft];
    },
  },
  "a foot six": {
    wants: "ft",
    say: (n) => {
      const [inches, part] = [1 + upTo(10, n), upTo(7, Math.floor(n / 11))];
      const and = part === 0 ? "" : ` and ${EIGHTHS[part]}`;
      return [`${n % 2 ? "a foot" : "one foot"} ${american(inches)}${and}${n % 3 ? " inches" : ""}`, 1 + (inches + part / 8) / 12];
    },
  },
  "decimals in words": {
    wants: "ft",
    say: (n) => {
      const [whole, tenth] = [upTo(299, n), 1 + upTo(8, Math.floor(n / 300))];
      return [`${words(whole, n)} point ${american(tenth)}${n % 2 ? " feet" : ""}`, whole + tenth / 10];
    },
  },
  "decimals in digits": { wants: "in", say: (n) => [`${(1 + upTo(9999, n)) / 100}${n % 2 ? " inches" : ""}`, (1 + upTo(9999, n)) / 100] },
  "inches where feet are wanted": { wants: "ft", say: (n) => [`${words(1 + upTo(999, n), n)} inches`, (1 + upTo(999, n)) / 12] },
  "feet where inches are wanted": { wants: "in", say: (n) => [`${words(1 + upTo(299, n), n)} feet`, 12 * (1 + upTo(299, n))] },
  "miles an hour": {
    wants: "mph",
    say: (n) => [`${words(upTo(99, n), n)} ${["mph", "miles an hour", "miles per hour", ""][n % 4]}`.trim(), upTo(99, n)],
  },
  degrees: { wants: "deg", say: (n) => [`${words(upTo(89, n), n)} degrees`, upTo(89, n)] },
};

/** What could be two things: the part may be of a foot or of an inch, one digit after the other may be feet and inches. */
const TWO_THINGS: Readonly<Record<string, Form>> = {
  "hundred and twenty foot and a quarter": {
    wants: "ft",
    say: (n) => {
      const [ft, part] = [1 + upTo(299, n), 1 + upTo(6, Math.floor(n / 300))];
      return [`${words(ft, n)} foot and ${EIGHTHS[part]}`, ft + part / 96];
    },
  },
  "digit after digit: six two": {
    wants: "ft",
    say: (n) => {
      const [a, b] = [1 + upTo(8, n), 1 + upTo(8, Math.floor(n / 9))];
      return [`${american(a)} ${american(b)}`, a * 10 + b];
    },
  },
  "pairs at feet: one twenty": {
    wants: "ft",
    say: (n) => {
      const [a, b] = [1 + upTo(8, n), 10 * (2 + upTo(7, Math.floor(n / 9)))];
      return [`${american(a)} ${american(b)}`, a * 100 + b];
    },
  },
};

describe("numbers as crews say them, never other than said", () => {
  it.each(Object.keys(TWO_THINGS))("%s is asked again", (form) => {
    const { wants, say } = TWO_THINGS[form]!;
    const taken = Array.from({ length: 300 }, (_, n) => say(n)[0]).filter((phrase) => readingsIn(phrase, wants).n.length === 1);
    expect(taken).toEqual([]);
  });

  it.each(Object.keys(FORMS))("%s", (form) => {
    const { wants, say } = FORMS[form]!;
    const wrong: string[] = [];
    let right = 0;
    const known = new Map<string, readonly number[]>();
    for (let n = 0; n < PHRASES; n++) {
      const [phrase, is] = say(n);
      const read = known.get(phrase) ?? readingsIn(phrase, wants).n;
      known.set(phrase, read);
      if (read.length !== 1) continue;
      if (Math.abs(read[0]! - is) < 1e-5) right++;
      else wrong.push(`${phrase}: ${read[0]}, and ${is} was said`);
    }
    expect(wrong.slice(0, 10)).toEqual([]);
    expect((100 * right) / PHRASES).toBeGreaterThanOrEqual(AT_ONCE_PERCENT);
  });
});
