import type { Misunderstanding } from "../../machines/conversation/interpret.ts";
import type { Reason, Reply } from "../../machines/conversation/reply-to.ts";
import type { BindingIntent, Reading } from "../../machines/install/commands.ts";
import type { Value } from "../../machines/install/gates.ts";
import type { WallTime } from "../../machines/install/ids.ts";
import type { Question } from "../../machines/install/script-index.ts";
import type { Step } from "../../machines/install/step.ts";
import { own } from "../../machines/lookup/own.ts";
import type { CallText } from "./call-text.ts";
import type { Teller } from "./teller.ts";
import { wholeMinute } from "./whole-minute.ts";
import type { Words } from "./words.ts";

/** A call, or what is asked apart from one: as far as its words go. */
type Worded = Pick<Step, "wordsKey" | "params">;
const MAX_CHANGES = 8;

/** The words of a call; one that has none goes by their key. */
export const callText = ({ wordsKey }: Worded, { calls }: Words): CallText =>
  own(calls, wordsKey) ?? { say: () => wordsKey, why: "", wrong: "", well: "" };

/** What is said at a call. */
export const sayText = (step: Worded, words: Words): string => callText(step, words).say(step.params);

/** What is asked, in words; nothing where nothing is asked. */
export const askText = (step: Worded, words: Words): string | undefined => callText(step, words).ask?.(step.params);

/** What the guide says back. */
export function replyText(reply: Reply, teller: Teller, words: Words): string {
  switch (reply.is) {
    case "refused":
      return reply.reasons.map((reason) => reasonText(reason, teller, words)).join(" ");
    case "done":
      return words.didText(reply.did);
    case "wentOn":
      return [inFront(reply, words), reply.to ? sayText(reply.to, words) : words.didText(reply.did)].join(" ").trim();
    case "asks":
      return `${inFront(reply, words)} ${reasonText(reply.reason, teller, words)}`;
    case "answered":
      return [words.didText(reply.did), reply.finding && words.findingText(reply.finding)].filter(Boolean).join(" ");
    case "stopped":
      return [words.stopText(reply.inHand, reply.shelter), reply.notSeconds === null ? "" : words.sky.notSeconds(reply.notSeconds)]
        .filter((text) => text !== "")
        .join(" ");
    case "overRaise":
      return words.overRaiseText(reply.limitMph);
    case "notGood":
      return reasonText(reply.reason, teller, words);
    case "readBack": {
      const { question, outOfLimit } = reply;
      const limit = outOfLimit && question ? words.limitText(question.gate) : undefined;
      return words.readBackText(bindingText(reply, teller.zone, words), question ? askText(question, words) : undefined, limit);
    }
    case "outOfUse":
      return words.trouble.stops(reply.thing, reply.stops);
    case "backInUse":
      return words.trouble.back(reply.thing, reply.left);
    case "found":
      return words.found.reply(reply.what, reply.shuts, reply.dropped);
    case "overAgreed":
      return words.overAgreedText[reply.what](reply.mph, reply.agreedMph);
    case "hurt":
      return words.hurt.reply(reply.address, reply.firstAid);
    case "proposed": {
      const texts = reply.changes.map((change) => words.changeText(change, teller));
      return `${words.didText("proposed")} ${texts.length === 0 ? words.changes.nothing : words.changes.some(texts, MAX_CHANGES)}`;
    }
  }
}

/** The same as it stands in the thread, where the next call stands beside it. */
export function shortReplyText(reply: Reply, teller: Teller, words: Words): string {
  if (reply.is !== "wentOn") return replyText(reply, teller, words);
  return reply.answer === null ? words.didText(reply.did) : inFront(reply, words);
}

/** What the answer came to, where that is more than its value; else the answer. */
const inFront = ({ answer, finding }: Extract<Reply, { is: "wentOn" | "asks" }>, words: Words): string =>
  finding === null ? answerInFront(answer, words) : words.findingText(finding) || answerInFront(answer, words);

/** "Six." */
function answerInFront(answer: Value | Reading | null, words: Words): string {
  if (answer === null) return "";
  return `${"takenAt" in answer ? words.intentText({ type: "reading", reading: answer }) : words.valueText(answer)}.`;
}

/** Why not, and what to do. */
export function reasonText({ refusal, question, value, finding, inHand, wind }: Reason, { name, zone }: Teller, words: Words): string {
  return words.refusalText(refusal, {
    ask: (question && askText(question, words)) ?? null,
    ifNot: (question && callText(question, words).ifNot) ?? null,
    limit: question ? words.limitText(question.gate) : null,
    value: value ? words.valueText(value) : null,
    found: finding ? words.findingText(finding) : null,
    notBefore: momentOf(refusal) === null ? null : words.when.clock(zone, wholeMinute(momentOf(refusal)!)),
    check: question?.gate.check.kind ?? null,
    inHand,
    wind: wind && question ? { ...wind, gate: question.gate.id } : null,
    name,
  });
}

/** The moment that a refusal speaks of; `null` where it speaks of none. */
function momentOf(refusal: Reason["refusal"]): WallTime | null {
  if ("notBefore" in refusal) return refusal.notBefore;
  return refusal.why === "pastHour" ? refusal.clearBy : null;
}

/** What is read back: a lean with its way, a reading of earlier with the time at which it was taken. */
function bindingText({ intent, takenAt }: { readonly intent: BindingIntent; readonly takenAt: number | null }, zone: string, words: Words) {
  if (intent.type === "answer" && intent.value.kind === "measure" && intent.value.unit === "deg") return words.leanText(intent.value.n);
  const text = words.intentText(intent);
  return takenAt === null ? text : words.takenText(text, words.when.clock(zone, takenAt));
}

/** Why words were no command at a call, and what to say instead. */
export function misunderstandingText(because: Misunderstanding, question: Question | null, words: Words): string {
  const { errors, voice } = words;
  const asked = (question && askText(question, words)) || errors.sayOrPress;
  switch (because.why) {
    case "wrongUnit":
      return errors.wrongUnit(because.gave, because.wants);
    case "ambiguous":
      return errors.ambiguous(choices(because, words));
    case "noSuchWind":
      return errors.noSuchWind;
    case "noSuchAir":
      return errors.noSuchAir;
    case "sayCorrect":
      return voice.sayCorrect;
    case "elsewhere":
      return errors.elsewhere(because.words, asked);
    case "noMeaning":
      return errors.notUnderstood(because.words, asked);
  }
}

const choices = ({ n, unit }: Extract<Misunderstanding, { why: "ambiguous" }>, { quantity, voice }: Words): string =>
  n.map((value) => (unit === "mph" || unit === "count" ? String(value) : quantity(value, unit))).join(voice.or);
