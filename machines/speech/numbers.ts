import type { Unit } from "../install/gates.ts";

/** A number as it was said, with the unit where one was. */
export type Said = { readonly n: number; readonly unit: Unit | "mph" | null };
export type Wants = Unit | "mph" | "count";

const WORDS: Readonly<Record<string, number>> = Object.fromEntries(
  "zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen"
    .split(" ")
    .map((w, i) => [w, i]),
);
const TENS: Readonly<Record<string, number>> = {
  twenty: 20,
  thirty: 30,
  forty: 40,
  fifty: 50,
  sixty: 60,
  seventy: 70,
  eighty: 80,
  ninety: 90,
};
const UNITS: readonly (readonly [pattern: RegExp, unit: Said["unit"], factor: number])[] = [
  [/^(?:feet|foot|ft|')$/, "ft", 1],
  [/^(?:inches|inch|in|")$/, "in", 1],
  [/^(?:millimetres?|millimeters?|mm)$/, "in", 1 / 25.4],
  [/^(?:centimetres?|centimeters?|cm)$/, "in", 1 / 2.54],
  [/^(?:metres?|meters?|m)$/, "ft", 1 / 0.3048],
  [/^(?:degrees?|deg|°)$/, "deg", 1],
  [/^(?:pounds?|lbs?|lbf)$/, "lbf", 1],
  [/^turns?$/, "turns", 1],
  [/^mph$/, "mph", 1],
];

/**
 * Reads "8", "eight", "5 1/2 in", "89' 5 5/16\"", "six foot two", "2.5 m", "-3 degrees". Feet and inches in one go come
 * back in feet; metric in the foot or inch it stands for. `null` where it is no number, or more than one.
 */
export function readNumber(text: string): Said | null {
  const tokens = text
    .toLowerCase()
    .replaceAll(/[’′]/g, "'")
    .replaceAll(/[”″]|''/g, '"')
    .replaceAll(/miles (?:an|per) hour/g, "mph")
    .match(/-?\d+\/\d+|-?\d+(?:\.\d+)?|[a-z]+|['"°]|[^\s\w-]/g);
  if (!tokens) return null;
  const parts: { n: number; unit: Said["unit"] | "none"; factor: number }[] = [];
  let i = 0;
  while (i < tokens.length) {
    const read = quantity(tokens, i);
    if (!read) return null;
    i = read.next;
    const unit = UNITS.find(([pattern]) => pattern.test(tokens[i] ?? ""));
    if (unit) i += 1;
    parts.push({ n: read.n, unit: unit ? unit[1] : "none", factor: unit ? unit[2] : 1 });
    if (tokens[i] === "and") i += 1;
  }
  const [first, second] = parts;
  if (!first || parts.length > 2) return null;
  if (!second) return { n: first.n * first.factor, unit: first.unit === "none" ? null : first.unit };
  const inches = second.unit === "in" || (second.unit === "none" && second.n < 12);
  return first.unit === "ft" && first.factor === 1 && inches ? { n: first.n + second.n / 12, unit: "ft" } : null;
}

/** One quantity: a whole number with a fraction after it, a decimal, or number words. */
function quantity(tokens: readonly string[], from: number): { n: number; next: number } | null {
  const first = tokens[from]!;
  if (/^-?\d+\/\d+$/.test(first)) return finite(fraction(first), from + 1);
  if (/^-?\d/.test(first)) {
    const part = tokens[from + 1] ?? "";
    return /^\d+\/\d+$/.test(part) ? finite(Number(first) + fraction(part), from + 2) : finite(Number(first), from + 1);
  }
  let n = 0;
  let i = from;
  for (; i < tokens.length; i++) {
    const word = tokens[i]!;
    if (word in TENS) n += TENS[word]!;
    else if (word in WORDS) n += WORDS[word]!;
    else if (word === "hundred") n = Math.max(n, 1) * 100;
    else if (
      !(word === "a" && tokens[i + 1] === "hundred") &&
      !(word === "and" && i > from && (tokens[i + 1] ?? "") in { ...WORDS, ...TENS })
    )
      break;
  }
  if (i === from) return null;
  if (tokens[i] === "and" && tokens[i + 1] === "a" && /^(half|quarter)$/.test(tokens[i + 2] ?? ""))
    return finite(n + (tokens[i + 2] === "half" ? 0.5 : 0.25), i + 3);
  return finite(n, i);
}

const finite = (n: number, next: number) => (Number.isFinite(n) ? { n, next } : null);
const fraction = (text: string): number => {
  const [over, under] = text.split("/").map(Number);
  return over! / under!;
};

/** The number in the unit that is wanted; a bare number is taken in it. `null` where the unit is another kind of thing. */
export function inUnit({ n, unit }: Said, wants: Wants): number | null {
  if (unit === null || unit === wants) return n;
  if (unit === "ft" && wants === "in") return n * 12;
  return unit === "in" && wants === "ft" ? n / 12 : null;
}
