import { measures, readQuantity } from "./quantities.ts";
import { tokens } from "./tokens.ts";
import { UNITS } from "./units.ts";

const DIGITS = /^\d+(?:\.\d+)?$/;
const SMALL = "one|two|three|four|five|six|seven|eight|nine";
const TENS = "twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety";
const NUMBER_WORD = new RegExp(`^(?:\\d+(?:\\.\\d+)?|${SMALL}|ten|eleven|twelve|\\w+teen|${TENS}|zero|oh|o)$`);
/** Two tokens that nobody takes for the end of one number and the beginning of the next. */
const JOINED = new RegExp(`^(?:(?:${TENS}) (?:${SMALL})|(?:hundred|thousand) (?:${SMALL}|ten|eleven|twelve|\\w+teen|${TENS}))$`);

/** Stands for a run of numbers that could not be taken apart. */
const UNSURE = "";

/**
 * The texts of so many numbers said in a row, in order. Recognizers drop commas, so numbers in digits are one each; words that
 * could also be other numbers are not taken apart. `null` if they cannot be told apart.
 *
 * @example numberTexts("11 9 11 9", 4) // ["11", "9", "11", "9"]
 */
export function numberTexts(said: string, many: number): readonly string[] | null {
  const parts = said.split(/(?:,(?=\D)|;)\s*(?:(?:and|then) )?| then /i).map((part) => part.trim());
  const texts = parts.length === many ? parts : parts.flatMap((part) => apart(part) ?? [UNSURE]);
  // "Three feet, six inches" may be one length.
  const isOne = (a: string, b: string) =>
    [`${a}, ${b}`, ...(hasUnit(a) ? [`${a} ${b}`] : [])].some((text) => readQuantity(text).length > 0);
  const sure = texts.length === many && !texts.includes(UNSURE) && !texts.some((text, i) => i > 0 && isOne(texts[i - 1]!, text));
  return sure ? texts : null;
}

const hasUnit = (text: string): boolean => readQuantity(text).some(({ unit }) => unit !== null);

/** The only way to take a run of numbers apart; `null` if there is none, or more than one. */
function apart(run: string): readonly string[] | null {
  const t = tokens(run);
  if (t === null || t.length === 0) return null;
  // Ways from each token to the end, from the last one back: at most two, because more would not tell more.
  const ways: (readonly (readonly string[])[])[] = [];
  for (let at = t.length - 1; at >= 0; at--)
    ways[at] = spansAt(t, at)
      .flatMap((next) =>
        (next === t.length ? [[]] : (ways[afterJoiner(t, next)] ?? [])).map((rest) => [t.slice(at, next).join(" "), ...rest]),
      )
      .slice(0, 2);
  return ways[0]!.length === 1 ? ways[0]![0]! : null;
}

const afterJoiner = (t: readonly string[], at: number): number => (t[at] === "and" || t[at] === "," ? at + 1 : at);

/** Where a number that starts at a token may end. One that ends in a fraction or a unit always takes it along. */
function spansAt(t: readonly string[], at: number): readonly number[] {
  const found = measures(t, at, UNITS).filter(
    (m) => !m.assumed && !joinsDigits(t.slice(at, m.next)) && !JOINED.test(`${t[m.next - 1]} ${t[m.next]}`),
  );
  const longest = Math.max(...found.map((m) => m.next));
  const whole = found.some((m) => m.next === longest && (m.unit !== null || m.kind === "mixed" || m.kind === "fraction"));
  return [...new Set(whole ? [longest] : found.map((m) => m.next))];
}

/** Whether a number in digits stands next to another number: those are two. */
const joinsDigits = (span: readonly string[]): boolean =>
  span.some((word, i) => {
    const before = span[i - 1] ?? "";
    return NUMBER_WORD.test(word) && NUMBER_WORD.test(before) && (DIGITS.test(word) || DIGITS.test(before));
  });
