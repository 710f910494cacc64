import { expected } from "../../install/checks/any-check.ts";
import { type Asked, answerable, type Listening } from "../listening.ts";
import type { Meaning } from "../meanings.ts";
import { plain, trimmed } from "../plain.ts";
import { parseAlarm } from "./alarms.ts";
import { parseAnswer } from "./answers.ts";
import { parseCommand } from "./commands.ts";
import { parseFound } from "./found.ts";
import { parseHandOver } from "./hand-over.ts";
import { isHold } from "./holds.ts";
import { asLetters } from "./letters.ts";
import { parseNoThunder } from "./no-thunder.ts";
import { parseQuestion } from "./questions.ts";
import { parseCold, parseHeat, parseLook } from "./sky.ts";
import { parseTrouble } from "./trouble.ts";
import { parseWind, splitTaken } from "./wind.ts";

/** What is said before an order and changes nothing about it. */
const BEFORE_AN_ORDER = /^(?:(?:okay|ok|alright|all right|hey|guys|let's|we(?:'ve)? (?:need|have|got) to|we gotta)[\s,]+)+/i;
const BECAUSE = "(?:,? (?:because|since)|,) ";
const WITH_TEXT: readonly (readonly [RegExp, (text: string) => Meaning])[] = [
  [/^make (?:it )?safe\b[ ,:-]*(.*)$/is, (text) => ({ intent: { type: "makeSafe", because: text.replace(/^because /i, "") || null } })],
  [new RegExp(`^stand (?:the job )?down${BECAUSE}(.+)$`, "is"), (text) => ({ intent: { type: "standDown", because: text } })],
  [/^carry on\b[ ,:;.-]+(?:because )?(.+)$/is, (text) => ({ intent: { type: "carryOn", became: text } })],
  [/^(?:make a |take a )?note\b[ ,:-]*(?:that )?(.+)$/is, (text) => ({ intent: { type: "note", text } })],
];
const WAIVE = new RegExp(`^(?:(?:waive|leave it)(?: out)?,? (?:because|since)|waive (?:it|this)(?: out)?${BECAUSE.trimEnd()}) (.+)$`, "is");
/** A pole's lean at a call that does not ask for one: worth keeping, but not an answer. */
const REMARK = /^[a-d]{1,2}\d*(?:'s| is) leaning .+$/i;

/**
 * The meaning of words where a job stands; elsewhere the same words may mean something else. How strictly spoken words are taken
 * is decided in `hear`.
 *
 * @example understand("carry on", { step: null, asks: null }) // { intent: { type: "carryOn", became: null } }
 */
export function understand(words: string, listening: Listening): Meaning {
  return meaningOf(isFreeText(words) ? words : words.replace(POLITE, ""), listening);
}

/** What is added out of politeness, and changes nothing. */
const POLITE = /[\s,]+(?:please|thank you|thanks|sir|ma'am|boss)[.!?]*$/i;
/** Words of somebody's own are kept as they were said. */
const isFreeText = (words: string): boolean => /^\W*(?:make a |take a )?note\b|\b(?:because|since)\b/i.test(words);

function meaningOf(heard: string, listening: Listening): Meaning {
  if (isHold(heard)) return { intent: { type: "hold" } };
  const words = plain(heard);
  const said = trimmed(heard);
  const command = parseCommand(said, answerable(listening).length > 0);
  // "Tied off, hook's shut, next" answers first: that goes on by itself.
  if (command) return (command.report && answerIn(command.report, listening)) || command.meant;
  const bare = said.replace(BEFORE_AN_ORDER, "");
  for (const [pattern, make] of WITH_TEXT) {
    const found = pattern.exec(bare);
    if (found) return make((found[1] ?? "").trim());
  }
  const handOver = parseHandOver(said);
  if (handOver) return handOver;
  const asked = answerable(listening);
  const because = WAIVE.exec(bare)?.[1]?.trim();
  if (because !== undefined && asked[0]) return { intent: { type: "waive", gate: asked[0].gate.id, because } };
  const found = parseFound(said);
  if (found) return found;
  const noThunder = parseNoThunder(said);
  if (noThunder) return noThunder;
  const alarm = parseAlarm(splitTaken(heard.trim()).words);
  if (alarm) return alarm;
  const air = parseHeat(heard) ?? parseCold(heard);
  if (air) return air;
  const question = parseQuestion(words, said);
  if (question) return { question };
  const trouble = parseTrouble(heard);
  if (trouble) return trouble;
  const atWindGate = asked.some(({ gate }) => expected(gate.check).expects === "wind");
  const wind = parseLook(heard, atWindGate) ?? parseWind(heard, atWindGate);
  const answer = firstAnswer(heard, asked);
  // "Gusts of thirty" is what is agreed, where that is asked.
  const agreed = "intent" in answer && asked.some(({ gate: { check } }) => check.kind === "measure" && check.unit === "mph");
  if (wind && !("wrongUnit" in wind) && !agreed) return wind;
  if (wind && !("intent" in answer)) return wind;
  const remark = ("notUnderstood" in answer || "elsewhere" in answer) && REMARK.test(asLetters(said));
  return remark ? { remark: said } : answer;
}

/** What a report says that stands before a command, if it answers what is asked. */
function answerIn(report: string, listening: Listening): Meaning | null {
  const answer = firstAnswer(report, answerable(listening));
  return "intent" in answer ? answer : null;
}

/** An answer to what is asked; if the words are none, to the call's own gate. A number with two readings is not asked elsewhere. */
function firstAnswer(heard: string, asked: readonly Asked[]): Meaning {
  const [first = { notUnderstood: true }, ...others] = asked.map((one) => parseAnswer(heard, one));
  if ("intent" in first || "ambiguous" in first) return first;
  return others.find((meant) => "intent" in meant) ?? first;
}
