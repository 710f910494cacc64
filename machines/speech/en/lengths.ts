import { LENGTHS, type LengthName } from "../../site/lengths.ts";
import type { AnswerParser } from "./asked.ts";
import { readingsIn } from "./number-in-unit.ts";

/** "A to B", "AC", "A. C.", "diagonal B D", "from D to A is". */
const PAIR =
  /^(?:and |then )?(?:the )?(?:diagonal |edge |side |from )?([a-d])\.?(?:\s*(?:to|-|–|and)\s*|\s*)([a-d])\.?(?:\s+(?:is|at|comes to|measures))?[\s,:]+(.+)$/i;
/** Where another length follows: "AB 120 feet, BC 60 feet". */
const NEXT_PAIR =
  /(?<!\b(?:diagonal|edge|side|from|the|and|then))[,;]?\s+(?:and |then )?(?=(?:diagonal |edge |side |from )?[a-d]\.?(?:\s*(?:to|-|–)\s*|\s?)[a-d]\.?(?:\s+(?:is|at|comes to|measures))?[\s,:]+[\d\p{L}])/iu;

/**
 * One or more lengths between corner marks, as called off a tape. A bare number is in feet. If a number has several readings, only
 * those between half and twice the wanted length are considered; if more than one is left, the guide asks again.
 */
export const parseLengths: AnswerParser<"lengths"> = (said, { wantFt }) => {
  const ft: Partial<Record<LengthName, number>> = {};
  for (const part of said.replaceAll(/\bcorner (?=[a-d]\b)/gi, "").split(NEXT_PAIR)) {
    const found = PAIR.exec(part.trim());
    const name = found && nameOf(found[1]!, found[2]!);
    if (!found || !name || ft[name] !== undefined) return { notUnderstood: true };
    const { n: fitting, gave } = readingsIn(found[3]!, "ft");
    if (gave === undefined) return { notUnderstood: true };
    const want = wantFt[name]!;
    const meant = fitting.length > 1 ? fitting.filter((n) => n >= want / 2 && n <= want * 2) : fitting;
    const [n] = meant;
    if (fitting.length === 0) return { wrongUnit: { gave: gave ?? "", wants: "ft" } };
    if (n === undefined || meant.length > 1) return { ambiguous: { n: meant.length > 1 ? meant : fitting, unit: "ft" } };
    if (n <= 0) return { notUnderstood: true };
    ft[name] = n;
  }
  return { kind: "lengths", ft };
};

/** The length between two corners, in either order: C to A is AC. */
const nameOf = (from: string, to: string): LengthName | undefined => {
  const ends = [from.toUpperCase(), to.toUpperCase()];
  return LENGTHS.find((name) => name === ends.join("") || name === ends.reverse().join(""));
};
