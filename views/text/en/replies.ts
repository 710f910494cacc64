import type { Misunderstanding } from "../../../machines/conversation/interpret.ts";
import type { Reason, Reply } from "../../../machines/conversation/reply-to.ts";
import type { BindingIntent } from "../../../machines/install/commands.ts";
import type { Step } from "../../../machines/install/step.ts";
import { calls } from "./calls.ts";
import { changes, changeText, type Teller } from "./changes.ts";
import { errors } from "./errors.ts";
import { findingText, limitText, valueText } from "./limits.ts";
import { quantity } from "./names.ts";
import { didText, leanText, readBackText, refusalText, takenText } from "./refusals.ts";
import { intentText } from "./said.ts";
import { clock } from "./times.ts";
import { voice } from "./voice.ts";

const MAX_CHANGES = 8;

/** What a call asks, in words; nothing where it asks nothing. */
export const askText = (step: Step): string | undefined => calls[step.wordsKey]?.ask?.(step.params);

/** What the guide says back. */
export function replyText(reply: Reply, teller: Teller): string {
  switch (reply.is) {
    case "refused":
      return reply.reasons.map((reason) => reasonText(reason, teller.name)).join(" ");
    case "done":
      return didText(reply.did);
    case "answered":
      return `${didText(reply.did)} ${findingText(reply.finding)}`;
    case "notGood":
      return reasonText(reply.reason, teller.name);
    case "readBack": {
      const { step, outOfLimit } = reply;
      return readBackText(
        bindingText(reply, teller.zone),
        step ? askText(step) : undefined,
        outOfLimit && step?.gate ? limitText(step.gate) : undefined,
      );
    }
    case "proposed": {
      const texts = reply.changes.map((change) => changeText(change, teller));
      return `${didText("proposed")} ${texts.length === 0 ? changes.nothing : changes.some(texts, MAX_CHANGES)}`;
    }
  }
}

/** Why not, and what to do. */
export function reasonText({ refusal, step, value, finding }: Reason, name: Teller["name"]): string {
  return refusalText(refusal, {
    ask: (step && askText(step)) ?? null,
    ifNot: (step && calls[step.wordsKey]?.ifNot) ?? null,
    limit: step?.gate ? limitText(step.gate) : null,
    value: value ? valueText(value) : null,
    found: finding ? findingText(finding) : null,
    name,
  });
}

/** What is read back: a lean with its way, a reading of earlier with the time at which it was taken. */
function bindingText({ intent, takenAt }: { readonly intent: BindingIntent; readonly takenAt: number | null }, zone: string): string {
  if (intent.type === "answer" && intent.value.kind === "measure" && intent.value.unit === "deg") return leanText(intent.value.n);
  return takenAt === null ? intentText(intent) : takenText(intentText(intent), clock(zone)(takenAt));
}

/** Why words were no command at a call, and what to say instead. */
export function misunderstandingText(because: Misunderstanding, step: Step | null): string {
  switch (because.why) {
    case "wrongUnit":
      return errors.wrongUnit(because.gave, because.wants);
    case "ambiguous":
      return errors.ambiguous(choices(because));
    case "noSuchWind":
      return errors.noSuchWind;
    case "whichWay":
      return errors.whichWay;
    case "sayCorrect":
      return voice.sayCorrect;
    case "elsewhere":
      return errors.elsewhere(because.words, asked(step));
    case "noMeaning":
      return errors.notUnderstood(because.words, asked(step));
  }
}

const asked = (step: Step | null): string => (step?.gate && askText(step)) || errors.sayOrPress;
const choices = ({ n, unit }: Extract<Misunderstanding, { why: "ambiguous" }>): string =>
  n.map((value) => (unit === "mph" || unit === "count" ? String(value) : quantity(value, unit))).join(voice.or);
