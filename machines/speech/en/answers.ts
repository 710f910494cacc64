import { expected } from "../../install/checks/any-check.ts";
import type { Expected } from "../../install/checks/expected.ts";
import type { Value } from "../../install/gates.ts";
import type { Meaning } from "../meanings.ts";
import { plain, trimmed } from "../plain.ts";
import type { AnswerParser, Asked } from "./asked.ts";
import { parseCount } from "./count.ts";
import { parseDocument } from "./document.ts";
import { parseKitCounts } from "./kit-counts.ts";
import { parseLengths } from "./lengths.ts";
import { parseMeasure } from "./measure.ts";
import { stripPlace } from "./place.ts";
import { parseYesNo } from "./yes-no.ts";

const nothing = (): Meaning => ({ notUnderstood: true });

/** One parser for each kind of answer. A wind reading is not parsed here because it is accepted at every call. */
const PARSERS: { readonly [K in Expected["expects"]]: AnswerParser<K> } = {
  yesNo: parseYesNo,
  count: parseCount,
  measure: parseMeasure,
  lengths: parseLengths,
  counts: parseKitCounts,
  document: parseDocument,
  wind: nothing,
  nothing,
};

const NOT_KNOWN = /^(?:don't know|dont know|do not know|unknown|not sure|not known)$/;

/** Parses an answer to the gate of a step. Strict: either all of the words are the answer, or it is not understood. */
export function parseAnswer(heard: string, step: Asked): Meaning {
  const { rest, elsewhere } = stripPlace(trimmed(heard), step);
  const read = NOT_KNOWN.test(plain(rest)) ? ({ kind: "unknown" } as const) : parsed(rest, step);
  if (!("kind" in read)) return read;
  return elsewhere ? { elsewhere: trimmed(heard) } : { intent: { type: "answer", gate: step.gate.id, value: read } };
}

function parsed(said: string, step: Asked): Value | Meaning {
  const waitsFor = expected(step.gate.check);
  // TypeScript cannot tell that each parser takes the kind it is listed under.
  return (PARSERS[waitsFor.expects] as AnswerParser<Expected["expects"]>)(said, waitsFor, step);
}
