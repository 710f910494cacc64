import type { Meaning } from "../meanings.ts";
import { inUnit, type Quantity, type Wants } from "../quantity.ts";
import { readQuantity } from "./quantities.ts";

/**
 * One number in the wanted unit, or why there is none: no number, several readings, or a unit of another kind.
 *
 * @example numberInUnit("two feet", "in") // { n: 24 }
 */
export function numberInUnit(text: string, wants: Wants): { readonly n: number } | Meaning {
  const { n: fitting, gave } = readingsIn(text, wants);
  const [n] = fitting;
  if (n === undefined) return gave === undefined ? { notUnderstood: true } : { wrongUnit: { gave: gave ?? "", wants } };
  return fitting.length === 1 ? { n } : { ambiguous: { n: fitting, unit: wants } };
}

/**
 * Every reading of a whole text in the wanted unit, to a millionth; and the unit that was said, `undefined` where the text is no
 * number. `read` decides which readings there are: off a tape some are left out.
 *
 * @example readingsIn("one and three quarters of an inch", "ft") // { n: [0.145833, 1.0625], gave: "in" }
 */
export function readingsIn(
  text: string,
  wants: Wants,
  read = readQuantity,
): { readonly n: readonly number[]; readonly gave: string | null | undefined } {
  const readings = wants === "count" && RUN_OF_DIGITS.test(text) ? [] : read(text);
  const all =
    wants === "ft" ? [...readings, ...withFeetLeftOut(text, readings), ...inchesAtTheEnd(text), ...withPartOfAnInch(text)] : readings;
  const n = [...new Set(all.flatMap((r) => inUnit(r, wants) ?? []).map((n) => Math.round(n * 1e6) / 1e6))];
  const whole = wants === "count" || wants === "lbf" ? n.filter(Number.isInteger) : [];
  // Nobody counts in parts, and no gauge shows a hundredth of a pound: "one twenty" is 120 of them, and 1.2 of nothing.
  return { n: whole.length > 0 ? whole : n, gave: readings[0]?.unit };
}

/** "10 4", as recognizers write it, may be two counts. */
const RUN_OF_DIGITS = /\d\s+\d+$/;

const PART_OF_AN_INCH =
  /^(.+?)(?:,? and (?!.* and )|,? (?=\d+\/))((?:an? |one |three |five |seven |\d+\/)(?:\S+ )?(?:of an inch|inch|inches))$/i;
const PART_OF_EITHER =
  /^(.+?)(?:,? and (?!.* and )|,? (?=\d+\/))((?:an? |one |three |five |seven )?(?:\S+ )?(?:quarters?|eighths?|sixteenths?)|\d+\/(?:4|8|16|32))$/i;
/** "One twenty-eight and three quarters": a part so small is one of an inch as well as of a foot. A half is said of feet. */
function withPartOfAnInch(text: string): readonly Quantity[] {
  const [, whole, part] = PART_OF_EITHER.exec(text.trim()) ?? [];
  return whole === undefined ? [] : readQuantity(`${whole} feet and ${part} inch`);
}
/** "One twenty-eight and three quarters of an inch" off a tape in feet, read as inches: the feet may have gone without saying. */
function withFeetLeftOut(text: string, readings: readonly Quantity[]): readonly Quantity[] {
  const [, whole, part] = PART_OF_AN_INCH.exec(text.trim()) ?? [];
  if (whole === undefined || !readings.some(({ unit }) => unit === "in")) return [];
  return readQuantity(`${whole} feet and ${part}`);
}

const DIGIT = "(?:zero|oh|o|one|two|three|four|five|six|seven|eight|nine)";
const RUN_IN_WORDS = new RegExp(`^(${DIGIT}(?: ${DIGIT}){2,})[ -](${DIGIT})$`, "i");
/** "One oh four six" off a tape in feet, digit after digit, may end in inches. */
function inchesAtTheEnd(text: string): readonly Quantity[] {
  const [, feet, inches] = RUN_IN_WORDS.exec(text.trim()) ?? [];
  return feet === undefined ? [] : readQuantity(`${feet} feet ${inches} inches`);
}
