import type { Step } from "../../install/step.ts";
import type { Meaning } from "../meanings.ts";
import { plain } from "../plain.ts";
import type { AnswerParser, Asked } from "./asked.ts";
import { numberInUnit } from "./number-in-unit.ts";
import { readQuantity } from "./quantities.ts";

/** What was measured may follow the number. */
const SHOWN = /^(.+?) (?:showing|shows|away|clear)$/i;
const LEANS =
  /^(?:([a-d]{1,2}\d*|it)(?:'s| is)? )?leaning (in|inwards?|out|outwards?|towards?(?: the tent)?|away(?: from the tent)?) (.+)$/i;
const LEAN_LAST =
  /^(?:([a-d]{1,2}\d*|it)(?:'s| is)? )?(?:leaning )?(.+?) (in|inwards?|out|outwards?|towards?(?: the tent)?|away(?: from the tent)?)$/i;

/** A measurement in the gate's unit or one that converts to it; in degrees, a lean with its direction. */
export const parseMeasure: AnswerParser<"measure"> = (said, { unit }, step) => {
  if (/^none(?: here)?$/.test(plain(said))) return { kind: "none" };
  const leaning = unit === "deg" ? parseLean(said, step) : null;
  if (leaning !== null) return typeof leaning === "number" ? { kind: "measure", n: leaning, unit } : leaning;
  const read = numberInUnit(SHOWN.exec(said)?.[1] ?? said, unit);
  return "n" in read ? { kind: "measure", n: read.n, unit } : read;
};

/**
 * A lean with its direction: in, toward the tent, is negative; out is positive. Inches at the top of a side pole are converted to
 * degrees: asin(inches / pole length). `null` if it is not a lean.
 */
function parseLean(said: string, step: Asked): number | Meaning | null {
  const first = LEANS.exec(said);
  const last = LEAN_LAST.exec(said);
  const found = first ? { at: first[1], way: first[2]!, much: first[3]! } : last ? { at: last[1], way: last[3]!, much: last[2]! } : null;
  // "5 in" is five inches: only an amount with a unit can be followed by a direction.
  const amounts = found ? readQuantity(found.much) : [];
  if (!found || amounts.length === 0 || (found.at === undefined && !first && amounts.every((a) => a.unit === null))) {
    const without = readQuantity(SHOWN.exec(said)?.[1] ?? said);
    // Zero needs no direction; any other lean does.
    return without.length > 0 && without.every((a) => a.n !== 0 && (a.unit === null || a.unit === "deg")) ? { whichWay: true } : null;
  }
  if (amounts.some((a) => a.n < 0)) return { whichWay: true };
  if (!isAsked(found.at, step)) return { elsewhere: said };
  const sign = /^(?:in|toward)/i.test(found.way) ? -1 : 1;
  const degrees = numberInUnit(found.much, "deg");
  if ("n" in degrees) return sign * degrees.n;
  const inches = numberInUnit(found.much, "in");
  const poleFt = Number(step.params.sidePoleFt);
  if (!("n" in inches) || !(poleFt > 0) || inches.n >= poleFt * 12) return degrees;
  // Rounded up: a lean just over its limit must not be read as on it.
  return (sign * Math.ceil((Math.asin(inches.n / (poleFt * 12)) * 1800) / Math.PI - 1e-6)) / 10;
}

/** Whether the gate asks about the named pole: C is on both BC and CD. */
function isAsked(at: string | undefined, { params }: Step): boolean {
  if (at === undefined || at.toLowerCase() === "it") return true;
  const edge = String(params.edge ?? params.corner ?? "");
  const letters = at.toUpperCase().replaceAll(/\d/g, "");
  return letters.length === 1 ? edge.includes(letters) : edge === letters;
}
