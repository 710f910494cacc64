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

/** One parser for each thing that a gate can wait for. A wind reading is understood wherever it is said, and no answer. */
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

/** What words answer to the gate of a call. Strict: the whole of it is the answer, or it is none. */
export function parseAnswer(heard: string, step: Asked): Meaning {
  const { rest, elsewhere } = stripPlace(trimmed(heard), step);
  const read = NOT_KNOWN.test(plain(rest)) ? ({ kind: "unknown" } as const) : parsed(rest, step);
  if (!("kind" in read)) return read;
  return elsewhere ? { elsewhere: trimmed(heard) } : { intent: { type: "answer", gate: step.gate.id, value: read } };
}

function parsed(said: string, step: Asked): Value | Meaning {
  const waitsFor = expected(step.gate.check);
  // Each parser stands under what it parses: an index cannot tell TypeScript that.
  return (PARSERS[waitsFor.expects] as AnswerParser<Expected["expects"]>)(said, waitsFor, step);
}
