import type { Misunderstanding } from "../../machines/conversation/interpret.ts";
import type { Reason, Reply } from "../../machines/conversation/reply-to.ts";
import type { BindingIntent } from "../../machines/install/commands.ts";
import type { Step } from "../../machines/install/step.ts";
import { own } from "../../machines/lookup/own.ts";
import type { CallText } from "./call-text.ts";
import type { Words } from "./words.ts";

/** What a sentence is told with: people by name, times in the zone of the site. */
type Teller = { readonly name: (id: string) => string; readonly zone: string };
const MAX_CHANGES = 8;

/** The words of a call; one that has none goes by its id. */
export const callText = ({ id, wordsKey }: Step, { calls }: Words): CallText =>
  own(calls, wordsKey) ?? { say: () => id, why: "", wrong: "", well: "" };

/** What a call asks, in words; nothing where it asks nothing. */
export const askText = (step: Step, words: Words): string | undefined => callText(step, words).ask?.(step.params);

/** What the guide says back. */
export function replyText(reply: Reply, teller: Teller, words: Words): string {
  switch (reply.is) {
    case "refused":
      return reply.reasons.map((reason) => reasonText(reason, teller.name, words)).join(" ");
    case "done":
      return words.didText(reply.did);
    case "answered":
      return `${words.didText(reply.did)} ${words.findingText(reply.finding)}`;
    case "notGood":
      return reasonText(reply.reason, teller.name, words);
    case "readBack": {
      const { step, outOfLimit } = reply;
      const limit = outOfLimit && step?.gate ? words.limitText(step.gate) : undefined;
      return words.readBackText(bindingText(reply, teller.zone, words), step ? askText(step, words) : undefined, limit);
    }
    case "proposed": {
      const texts = reply.changes.map((change) => words.changeText(change, teller));
      return `${words.didText("proposed")} ${texts.length === 0 ? words.changes.nothing : words.changes.some(texts, MAX_CHANGES)}`;
    }
  }
}

/** Why not, and what to do. */
export function reasonText({ refusal, step, value, finding }: Reason, name: Teller["name"], words: Words): string {
  return words.refusalText(refusal, {
    ask: (step && askText(step, words)) ?? null,
    ifNot: (step && callText(step, words).ifNot) ?? null,
    limit: step?.gate ? words.limitText(step.gate) : null,
    value: value ? words.valueText(value) : null,
    found: finding ? words.findingText(finding) : null,
    name,
  });
}

/** What is read back: a lean with its way, a reading of earlier with the time at which it was taken. */
function bindingText({ intent, takenAt }: { readonly intent: BindingIntent; readonly takenAt: number | null }, zone: string, words: Words) {
  if (intent.type === "answer" && intent.value.kind === "measure" && intent.value.unit === "deg") return words.leanText(intent.value.n);
  const text = words.intentText(intent);
  return takenAt === null ? text : words.takenText(text, words.when.clock(zone, takenAt));
}

/** Why words were no command at a call, and what to say instead. */
export function misunderstandingText(because: Misunderstanding, step: Step | null, words: Words): string {
  const { errors, voice } = words;
  const asked = (step?.gate && askText(step, words)) || errors.sayOrPress;
  switch (because.why) {
    case "wrongUnit":
      return errors.wrongUnit(because.gave, because.wants);
    case "ambiguous":
      return errors.ambiguous(choices(because, words));
    case "noSuchWind":
      return errors.noSuchWind;
    case "whichWay":
      return errors.whichWay;
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
