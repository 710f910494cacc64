import { expected } from "../../install/checks/any-check.ts";
import type { Step } from "../../install/step.ts";
import type { Meaning } from "../meanings.ts";
import { plain, trimmed } from "../plain.ts";
import { parseAnswer } from "./answers.ts";
import { isHold } from "./holds.ts";
import { parseQuestion } from "./questions.ts";
import { parseWind, splitTaken } from "./wind.ts";

const FIXED: readonly (readonly [RegExp, Meaning])[] = [
  [/^(?:next|done next|next call)$/, { intent: { type: "next" } }],
  [
    /^(?:back|back one|go back one)(?: (?:i|we)(?:'ve)? (?:missed|skipped|dropped) (?:an?|one|the|two) (?:loop|hook|ring|hole|knot)s?)?$/,
    { intent: { type: "back" } },
  ],
  [/^carry on$/, { intent: { type: "carryOn" } }],
  [/^(?:correct|that's correct|that is correct)$/, { confirm: "correct" }],
  [/^(?:wrong|no wrong|that's wrong|that is wrong|not correct|incorrect)$/, { confirm: "wrong" }],
];
const WITH_TEXT: readonly (readonly [RegExp, (text: string) => Meaning])[] = [
  [/^make (?:it )?safe\b[ ,:-]*(.*)$/is, (text) => ({ intent: { type: "makeSafe", because: text.replace(/^because /i, "") || null } })],
  [/^stand (?:the job )?down,? (?:because|since) (.+)$/is, (text) => ({ intent: { type: "standDown", because: text } })],
  [/^note\b[ ,:-]*(.+)$/is, (text) => ({ intent: { type: "note", text } })],
];
const THUNDER = /^(?:(?:heard )?thunder(?: heard)?|lightning(?: seen)?)$/;
/** A pole's lean at a call that does not ask for one: worth keeping, but not an answer. */
const REMARK = /^[a-d]{1,2}\d*(?:'s| is) leaning .+$/i;

/**
 * The meaning of words at a call; at another call the same words may mean something else. How strictly spoken words are taken is
 * decided in `hear`.
 *
 * @example understand("carry on", null) // { intent: { type: "carryOn" } }
 */
export function understand(heard: string, step: Step | null): Meaning {
  if (isHold(heard)) return { intent: { type: "hold" } };
  const words = plain(heard);
  const fixed = FIXED.find(([pattern]) => pattern.test(words));
  if (fixed) return fixed[1];
  if (THUNDER.test(plain(splitTaken(trimmed(heard)).words))) return { thunder: true };
  const said = trimmed(heard);
  for (const [pattern, make] of WITH_TEXT) {
    const found = pattern.exec(said);
    if (found) return make((found[1] ?? "").trim());
  }
  const question = parseQuestion(words, said);
  if (question) return { question };
  const gate = step?.gate ?? null;
  const waive = /^(?:waive|leave it)(?: out)?,? (?:because|since) (.+)$/is.exec(said);
  if (waive && gate) return { intent: { type: "waive", gate: gate.id, because: waive[1]!.trim() } };
  const wind = parseWind(heard, gate !== null && expected(gate.check).expects === "wind");
  if (wind) return wind;
  const answer: Meaning = step && gate ? parseAnswer(heard, { ...step, gate }) : { notUnderstood: true };
  const remark = ("notUnderstood" in answer || "elsewhere" in answer) && REMARK.test(said);
  return remark ? { remark: said } : answer;
}
