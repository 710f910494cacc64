import { expected } from "../../install/checks/any-check.ts";
import type { Expected } from "../../install/checks/expected.ts";
import type { Value } from "../../install/gates.ts";
import type { Asked } from "../listening.ts";
import type { Meaning } from "../meanings.ts";
import { plain, trimmed } from "../plain.ts";
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

const NOT_KNOWN = /^(?:(?:i |we )?(?:don't|dont|do not) know|unknown|(?:i'm |we're )?not sure|not known|no idea|can't tell)$/;

/** Parses an answer to what is asked. Strict: either all of the words are the answer, or it is not understood. */
export function parseAnswer(heard: string, asked: Asked): Meaning {
  const waitsFor = expected(asked.gate.check);
  // A paper is named as it was said.
  const said = waitsFor.expects === "document" ? trimmed(heard) : asLetters(trimmed(heard));
  const { rest, elsewhere } = stripPlace(said, asked);
  const read = NOT_KNOWN.test(plain(rest)) ? ({ kind: "unknown" } as const) : parsed(rest, waitsFor, asked);
  if (!("kind" in read)) return read;
  return elsewhere ? { elsewhere: trimmed(heard) } : { intent: { type: "answer", gate: asked.gate.id, value: read } };
}

function parsed(said: string, waitsFor: Expected, asked: Asked): Value | Meaning {
  // TypeScript cannot tell that each parser takes the kind it is listed under.
  return (PARSERS[waitsFor.expects] as AnswerParser<Expected["expects"]>)(said, waitsFor, asked);
}
