import { LENGTHS, type LengthName } from "../../site/lengths.ts";
import type { Quantity } from "../quantity.ts";
import type { AnswerParser } from "./asked.ts";
import { withoutOpening } from "./lead-in.ts";
import { readingsIn } from "./number-in-unit.ts";
import { readQuantity } from "./quantities.ts";

/** "A to B", "AC", "A. C.", "diagonal B D", "from D to A is". */
const PAIR =
  /^(?:and |then )?(?:the )?(?:diagonal |edge |side |from )?([a-d])\.?(?:\s*(?:to|-|–|and)\s*|\s*)([a-d])\.?(?:\s+(?:is|at|comes to|measures))?[\s,:]+(.+)$/i;
/** Where another length follows: "AB 120 feet, BC 60 feet". */
const NEXT_PAIR =
  /(?<!\b(?:diagonal|edge|side|from|the|and|then|to))[,;]?\s+(?:and |then )?(?=(?:diagonal |edge |side |from )?[a-d]\.?(?:\s*(?:to|-|–)\s*|\s?)[a-d]\.?(?:\s+(?:is|at|comes to|measures))?[\s,:]+[\d\p{L}])/iu;

/** A tape that reads more than so many times the longest length of the field was not heard right. Common practice, no source. */
const MAX_TIMES_THE_FIELD = 2;

/**
 * One or more lengths between corner marks, as called off a tape. A bare number is in feet. What is wanted never chooses between two
 * readings of a number: the guide asks again, as it does for one that no tape on this field gives.
 */
export const parseLengths: AnswerParser<"lengths"> = (said, { wantFt }) => {
  const maxFt = MAX_TIMES_THE_FIELD * Math.max(...Object.values(wantFt));
  const ft: Partial<Record<LengthName, number>> = {};
  for (const part of inLengths(said).split(NEXT_PAIR)) {
    const found = PAIR.exec(part.trim().replace(/ (?:even|flat|exactly|on the nose)$/i, ""));
    const name = found && nameOf(found[1]!, found[2]!);
    if (!found || !name || ft[name] !== undefined) return { notUnderstood: true };
    const { n: readings, gave } = readingsIn(found[3]!, "ft", offATape);
    if (gave === undefined) return { notUnderstood: true };
    const [n] = readings;
    if (n === undefined) return { wrongUnit: { gave: gave ?? "", wants: "ft" } };
    if (readings.length > 1 || n > maxFt) return { ambiguous: { n: readings, unit: "ft" } };
    if (n <= 0) return { notUnderstood: true };
    ft[name] = n;
  }
  return { kind: "lengths", ft };
};

/** Without the words around lengths, short forms in full. */
const inLengths = (said: string): string => withoutOpening(said).replaceAll(/\bcorner (?=[a-d]\b)/gi, "");

/** Hundredths of a foot are said with "point": "one twenty" off a tape in feet is 120, and not 1.20. */
function offATape(text: string): readonly Quantity[] {
  const readings = readQuantity(text);
  const isWhole = ({ n, unit }: Quantity) => unit === null && Number.isInteger(n);
  return readings.some(isWhole) ? readings.filter((reading) => reading.unit !== null || isWhole(reading)) : readings;
}

/** The length between two corners, in either order: C to A is AC. */
const nameOf = (from: string, to: string): LengthName | undefined => {
  const ends = [from.toUpperCase(), to.toUpperCase()];
  return LENGTHS.find((name) => name === ends.join("") || name === ends.reverse().join(""));
};
