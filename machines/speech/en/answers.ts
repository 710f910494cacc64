import { expected } from "../../install/checks/any-check.ts";
import type { Expected } from "../../install/checks/expected.ts";
import type { Value } from "../../install/gates.ts";
import type { Asked } from "../listening.ts";
import type { Meaning } from "../meanings.ts";
import { phrases } from "../phrases.ts";
import { trimmed } from "../plain.ts";
import { implausibleIn } from "../plausible.ts";
import type { AnswerParser } from "./asked.ts";
import { parseCount } from "./count.ts";
import { parseDocument } from "./document.ts";
import { parseEach } from "./each.ts";
import { parseFigures } from "./figures.ts";
import { parseKitCounts } from "./kit-counts.ts";
import { parseLengths } from "./lengths.ts";
import { asLetters } from "./letters.ts";
import { parseMeasure } from "./measure.ts";
import { stripPlace } from "./place.ts";
import { clausesOf, inFull } from "./talk.ts";
import { parseYesNo } from "./yes-no.ts";

const nothing = (): Meaning => ({ notUnderstood: true });

/** One parser for each kind of answer. A wind reading is not parsed here because it is accepted at every call. */
const PARSERS: { readonly [K in Expected["expects"]]: AnswerParser<K> } = {
  yesNo: parseYesNo,
  count: parseCount,
  measure: parseMeasure,
  lengths: parseLengths,
  counts: parseKitCounts,
  figures: parseFigures,
  each: parseEach,
  document: parseDocument,
  wind: nothing,
  nothing,
};

/** Parses an answer to what is asked. Strict: either all of the words are the answer, or it is not understood. */
export function parseAnswer(heard: string, asked: Asked): Meaning {
  const waitsFor = expected(asked.gate.check);
  // A paper is named as it was said.
  const said = waitsFor.expects === "document" ? trimmed(heard) : asLetters(trimmed(heard));
  const { rest, elsewhere } = stripPlace(said, asked);
  const read = isNotKnown(rest) ? ({ kind: "unknown" } as const) : parsed(rest, waitsFor, asked);
  if (!("kind" in read)) return read;
  const far = UNIT_SAID.test(rest) ? [] : implausibleIn(read, asked.gate.check);
  if (far.length > 0) return { ambiguous: { n: far, unit: "unit" in waitsFor ? waitsFor.unit : "count" } };
  return elsewhere ? { elsewhere: trimmed(heard) } : { intent: { type: "answer", gate: asked.gate.id, value: read } };
}

function parsed(said: string, waitsFor: Expected, asked: Asked): Value | Meaning {
  // TypeScript cannot tell that each parser takes the kind it is listed under.
  return (PARSERS[waitsFor.expects] as AnswerParser<Expected["expects"]>)(said, waitsFor, asked);
}

/** A unit beside a number: then it is meant as it was said. */
const UNIT_SAID =
  /['"′″]|(?:\d|\b)(?:in|inch(?:es)?|ft|foot|feet|mph|miles?|pounds?|lbs?|lbf|degrees?|deg|[cm]m|m|met(?:er|re)s?|kn|knots?|kph)\b/i;

/** "I don't know", as crews say it. */
export const NOT_KNOWN =
  "[i | we] (don't know | dont know | do not know) [yet | that | how many | how far | the number] | unknown | not known | no idea | lost count | " +
  "[i'm | we're] not sure [yet] | [i | we] (can't | cannot) tell [yet] [from (this | that | the) map] | [i | we] haven't (looked | measured | checked) [yet] | " +
  "[i | we] (gotta | got to | have to) (go look | look [again] | feel it again | measure it)";
const SAID_NOT_KNOWN = new Set(phrases(NOT_KNOWN).map(inFull));

/** Not known, and besides no more than why: no number and nothing that is so. */
function isNotKnown(said: string): boolean {
  const [first = "", ...others] = clausesOf(said);
  const all = [first, ...others].map((clause) => clause.replace(/^(?:uh|um|well|sorry|honestly) /, ""));
  const isUnknown = (clause: string) => SAID_NOT_KNOWN.has(clause) || NOT_KNOWN_OF.test(clause);
  return all.some(isUnknown) && all.every((clause) => isUnknown(clause) || !TELLS.test(clause));
}
/** The same of something: "not sure about the back side", "can't see the far corner". */
const NOT_KNOWN_OF =
  /^(?:i |we |i am |we are )?(?:do not know|not sure|can not (?:tell|see|read|find)|lost count|did not (?:look|count|measure|check)|no idea)(?: \S+){0,8}$/;
/** What may be an answer. */
const TELLS =
  /\d|^(?:yes|yeah|yep|no|nope|nah)\b|\b(?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|\w+teen|\w+ty|hundred|none|nothing|all|good|done)\b/;
