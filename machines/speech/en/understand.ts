import { expected } from "../../install/checks/any-check.ts";
import { type Asked, answerable, type Listening } from "../listening.ts";
import type { Meaning } from "../meanings.ts";
import { plain, trimmed } from "../plain.ts";
import { parseAlarm } from "./alarms.ts";
import { parseAnswer } from "./answers.ts";
import { parseHandOver } from "./hand-over.ts";
import { isHold } from "./holds.ts";
import { asLetters } from "./letters.ts";
import { parseQuestion } from "./questions.ts";
import { parseTrouble } from "./trouble.ts";
import { parseWind, splitTaken } from "./wind.ts";

const FIXED: readonly (readonly [RegExp, Meaning])[] = [
  [/^(?:next|done next|next call)$/, { intent: { type: "next" } }],
  [
    /^(?:back|back one|go back one)(?: (?:i|we)(?:'ve)? (?:missed|skipped|dropped) (?:an?|one|the|two) (?:loop|hook|ring|hole|knot)s?)?$/,
    { intent: { type: "back" } },
  ],
  [/^carry on$/, { intent: { type: "carryOn", became: null } }],
  [/^(?:correct|that's correct|that is correct)$/, { confirm: "correct" }],
  [/^(?:wrong|no wrong|that's wrong|that is wrong|not correct|incorrect)$/, { confirm: "wrong" }],
];
const WITH_TEXT: readonly (readonly [RegExp, (text: string) => Meaning])[] = [
  [/^make (?:it )?safe\b[ ,:-]*(.*)$/is, (text) => ({ intent: { type: "makeSafe", because: text.replace(/^because /i, "") || null } })],
  [/^stand (?:the job )?down,? (?:because|since) (.+)$/is, (text) => ({ intent: { type: "standDown", because: text } })],
  [/^carry on\b[ ,:;.-]+(?:because )?(.+)$/is, (text) => ({ intent: { type: "carryOn", became: text } })],
  [/^note\b[ ,:-]*(.+)$/is, (text) => ({ intent: { type: "note", text } })],
];
const WAIVE = /^(?:waive|leave it)(?: out)?,? (?:because|since) (.+)$/is;
/** A pole's lean at a call that does not ask for one: worth keeping, but not an answer. */
const REMARK = /^[a-d]{1,2}\d*(?:'s| is) leaning .+$/i;

/**
 * The meaning of words where a job stands; elsewhere the same words may mean something else. How strictly spoken words are taken
 * is decided in `hear`.
 *
 * @example understand("carry on", { step: null, asks: null }) // { intent: { type: "carryOn", became: null } }
 */
export function understand(heard: string, listening: Listening): Meaning {
  if (isHold(heard)) return { intent: { type: "hold" } };
  const words = plain(heard);
  const fixed = FIXED.find(([pattern]) => pattern.test(words));
  if (fixed) return fixed[1];
  const said = trimmed(heard);
  for (const [pattern, make] of WITH_TEXT) {
    const found = pattern.exec(said);
    if (found) return make((found[1] ?? "").trim());
  }
  const handOver = parseHandOver(said);
  if (handOver) return handOver;
  const asked = answerable(listening);
  const because = WAIVE.exec(said)?.[1]?.trim();
  if (because !== undefined && asked[0]) return { intent: { type: "waive", gate: asked[0].gate.id, because } };
  const alarm = parseAlarm(splitTaken(heard.trim()).words);
  if (alarm) return alarm;
  const question = parseQuestion(words, said);
  if (question) return { question };
  const trouble = parseTrouble(heard);
  if (trouble) return trouble;
  const wind = parseWind(
    heard,
    asked.some(({ gate }) => expected(gate.check).expects === "wind"),
  );
  const answer = firstAnswer(heard, asked);
  // "Gusts of thirty" is what is agreed, where that is asked.
  const agreed = "intent" in answer && asked.some(({ gate: { check } }) => check.kind === "measure" && check.unit === "mph");
  if (wind && !("wrongUnit" in wind) && !agreed) return wind;
  if (wind && !("intent" in answer)) return wind;
  const remark = ("notUnderstood" in answer || "elsewhere" in answer) && REMARK.test(asLetters(said));
  return remark ? { remark: said } : answer;
}

/** An answer to what is asked; if the words are none, to the call's own gate. A number with two readings is not asked elsewhere. */
function firstAnswer(heard: string, asked: readonly Asked[]): Meaning {
  const [first = { notUnderstood: true }, ...others] = asked.map((one) => parseAnswer(heard, one));
  if ("intent" in first || "ambiguous" in first) return first;
  return others.find((meant) => "intent" in meant) ?? first;
}
