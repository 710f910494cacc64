import type { Gate, Value } from "../../install/gates.ts";
import type { Step } from "../../install/step.ts";
import type { Meaning } from "../meanings.ts";
import { plain, trimmed } from "../plain.ts";
import { parseKitCounts } from "./kit-counts.ts";
import { parseLengths } from "./lengths.ts";
import { numberInUnit } from "./number-in-unit.ts";
import { stripPlace } from "./place.ts";
import { readQuantity } from "./quantities.ts";

/** A step whose gate is asked. */
type Asked = Step & { readonly gate: Gate };

const YES = /^(?:yes|yeah|yep|yes it is|yes they are|done yes|affirmative)$/;
const NO = /^(?:no|nope|not yet|no it is not|negative)$/;
const NOT_KNOWN = /^(?:don't know|dont know|do not know|unknown|not sure|not known)$/;
/** What a crew says for yes at one call and nowhere else. */
const YES_AT: Readonly<Record<string, RegExp>> = {
  "half.tied": /^(?:tied off|knotted|tied off and hooked|knotted hook closed|knotted and the hook closed)$/,
};
/** What is counted may be named after the number; nothing else may be. */
const COUNTED = /^(.+?) (?:stakes?|plates?|straps?|poles?|rings?|marks?|people)$/i;
/** What else may stand after the number, at one call and at no other. */
const COUNTED_AT: Readonly<Record<string, RegExp>> = {
  "half.looked": /^(.+?) (?:missed(?: loops?)?|loops? missed|loops?)$/i,
  "cloth.strapped": /^(.+?) strapped$/i,
  "interior.tied": /^(.+?) tied$/i,
  "under.in": /^(.+?) (?:going (?:in )?under|going in)$/i,
  "under.out": /^(.+?) (?:are )?out(?:,? (?:and )?nobody (?:left )?under)?$/i,
};
const NONE_AT: Readonly<Record<string, RegExp>> = {
  "half.looked": /^(?:none missed|no missed loops|no loops missed)$/,
  "damage.cloth": /^none damaged$/,
  "damage.rope": /^none damaged$/,
};
const NOBODY = /^(?:none|nobody)$/;
const SHOWN = /^(.+?) (?:showing|shows|away|clear)$/i;
const LEANS =
  /^(?:([a-d]{1,2}\d*|it)(?:'s| is)? )?leaning (in|inwards?|out|outwards?|towards?(?: the tent)?|away(?: from the tent)?) (.+)$/i;
const LEAN_LAST =
  /^(?:([a-d]{1,2}\d*|it)(?:'s| is)? )?(?:leaning )?(.+?) (in|inwards?|out|outwards?|towards?(?: the tent)?|away(?: from the tent)?)$/i;

/** What words answer to the gate of a call. Strict: the whole of it is the answer, or it is none. */
export function parseAnswer(heard: string, step: Asked): Meaning {
  const { rest, elsewhere } = stripPlace(trimmed(heard), step);
  const meant = answerTo(rest, step);
  return elsewhere && "intent" in meant ? { elsewhere: trimmed(heard) } : meant;
}

function answerTo(said: string, step: Asked): Meaning {
  const { gate } = step;
  const words = plain(said);
  const answer = (value: Value): Meaning => ({ intent: { type: "answer", gate: gate.id, value } });
  if (NOT_KNOWN.test(words)) return answer({ kind: "unknown" });
  const { check } = gate;
  switch (check.kind) {
    case "yesNo":
      if (YES.test(words) || YES_AT[step.wordsKey]?.test(words)) return answer({ kind: "yesNo", yes: true });
      return NO.test(words) ? answer({ kind: "yesNo", yes: false }) : { notUnderstood: true };
    case "document":
      return parseDocument(said, check.expected, answer);
    case "count":
    case "sameCount": {
      if (NOBODY.test(words) || NONE_AT[step.wordsKey]?.test(words)) return answer({ kind: "count", n: 0 });
      const read = numberInUnit((COUNTED_AT[step.wordsKey]?.exec(said) ?? COUNTED.exec(said))?.[1] ?? said, "count");
      return "n" in read ? answer({ kind: "count", n: read.n }) : read;
    }
    case "measure": {
      if (/^none(?: here)?$/.test(words)) return answer({ kind: "none" });
      const leaning = parseLean(said, step);
      if (leaning !== null) return typeof leaning === "number" ? answer({ kind: "measure", n: leaning, unit: check.unit }) : leaning;
      const read = numberInUnit(SHOWN.exec(said)?.[1] ?? said, check.unit);
      return "n" in read ? answer({ kind: "measure", n: read.n, unit: check.unit }) : read;
    }
    case "square":
      return told(parseLengths(said, check), answer);
    case "counts":
      return told(parseKitCounts(said, check), answer);
    default:
      return { notUnderstood: true };
  }
}

const told = (read: Value | Meaning, answer: (value: Value) => Meaning): Meaning => ("kind" in read ? answer(read) : read);

/** A paper by its number. Spaces and dashes are the recognizer's own: the expected number is taken as it is written. */
function parseDocument(said: string, expected: string | null, answer: (value: Value) => Meaning): Meaning {
  const bare = (text: string) => text.toLowerCase().replaceAll(/[^\p{L}\p{N}]/gu, "");
  const named = said.replace(/^(?:ticket number|number|ticket|sheet|paper) /i, "");
  if (expected !== null && bare(named) === bare(expected)) return answer({ kind: "document", named: expected });
  // Papers have numbers; without one it is talk.
  const talk = said.split(" ").length > 5 || /\b(?:no|not|wrong|give|me|it's|is|us)\b|n't\b/i.test(said);
  return said.length <= 80 && /\d/.test(said) && !talk ? answer({ kind: "document", named: said }) : { notUnderstood: true };
}

/**
 * A lean with its way: in, towards the tent, is minus; out is plus. Inches at the top of a side pole become degrees: the
 * angle whose sine is that over the pole's length. `null` where no lean was said, or of another pole than those asked.
 */
function parseLean(said: string, step: Asked): number | Meaning | null {
  if (step.gate.check.kind !== "measure" || step.gate.check.unit !== "deg") return null;
  const first = LEANS.exec(said);
  const last = LEAN_LAST.exec(said);
  const found = first ? { at: first[1], way: first[2]!, much: first[3]! } : last ? { at: last[1], way: last[3]!, much: last[2]! } : null;
  // "5 in" is five inches: only an amount with its unit has a way after it.
  const amounts = found ? readQuantity(found.much) : [];
  if (!found || amounts.length === 0 || (found.at === undefined && !first && amounts.every((a) => a.unit === null))) {
    const without = readQuantity(SHOWN.exec(said)?.[1] ?? said);
    // Plumb is plumb either way; anything else leans somewhere.
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
  // Rounded up, never down: a lean just over its limit must not be read as on it.
  return (sign * Math.ceil((Math.asin(inches.n / (poleFt * 12)) * 1800) / Math.PI - 1e-6)) / 10;
}

/** Whether a pole named in an answer stands where the gate asks: C stands on BC and on CD. */
function isAsked(at: string | undefined, { params }: Step): boolean {
  if (at === undefined || at.toLowerCase() === "it") return true;
  const edge = String(params.edge ?? params.corner ?? "");
  const letters = at.toUpperCase().replaceAll(/\d/g, "");
  return letters.length === 1 ? edge.includes(letters) : edge === letters;
}
