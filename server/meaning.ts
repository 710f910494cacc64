import { instantOf } from "../machines/conversation/clock.ts";
import type { BindingIntent, Intent, Spoken } from "../machines/install/commands.ts";
import type { DeviceId } from "../machines/install/ids.ts";
import { attentionState, currentStep } from "../machines/install/job.ts";
import { pendingReadBack } from "../machines/install/read-back.ts";
import type { JobId } from "../machines/record/entry.ts";
import { understand } from "../machines/speech/en/understand.ts";
import { hear } from "../machines/speech/hear.ts";
import type { Meaning } from "../machines/speech/meanings.ts";
import { answerTo } from "../views/answer.ts";
import { wordsOf } from "../views/reply.ts";
import type { Words } from "../views/text/words.ts";
import { Problem } from "./input/problem.ts";
import { type Body, toGateUnit } from "./input/say.ts";
import type { LiveJob, LiveJobs } from "./jobs.ts";

/** What a request comes to: a command for the record; or only something said back, and why nothing is recorded. */
export type Meant =
  | { readonly ask: Intent; readonly names?: Record<string, string>; readonly spoken: Spoken | null; readonly heard: string | null }
  | { readonly tell: string; readonly because: "question" | "leftAlone" | "notCaught"; readonly heard: string | null };

/** A body as what it means at the job as it stands. Throws a Problem where typed words or fields cannot be read. */
export function meaningOf(desks: LiveJobs, id: JobId, device: DeviceId, { say }: Body, words: Words): Meant {
  const desk = desks.load(id);
  const now = desks.now();
  const step = currentStep(desk.job);
  const waits = pendingReadBack(desk.job, device, now)?.entry ?? null;
  const here = { desk, now, waits, shown: waits, words };
  if ("alternatives" in say) {
    const { wakeWord } = desks;
    const heard = hear(say, { step, attention: attentionState(desk.job), waiting: waits !== null, wakeWord });
    if ("leftAlone" in heard)
      return { tell: heard.leftAlone === "wakeWord" ? words.voice.sayFirst(wakeWord) : "", because: "leftAlone", heard: heard.words };
    const meant = asked(heard.meant, heard.words, { ...here, shown: say.readBack });
    if ("wrong" in meant) return { tell: meant.wrong, because: "notCaught", heard: heard.words };
    if ("tell" in meant) return { ...meant, heard: heard.words };
    const ask: Intent = heard.readBack ? { type: "readBack", intent: meant.ask as BindingIntent } : meant.ask;
    return { ask, spoken: heard.source, heard: heard.words };
  }
  if ("heard" in say) {
    const meant = asked(understand(say.heard, step), say.heard, here);
    if ("wrong" in meant) {
      const { wrong } = meant;
      throw new Problem(422, (w) => w.errors.notTaken(wrong));
    }
    return { ...meant, spoken: null, heard: say.heard };
  }
  return { ...pressed(desks, id, now, say), spoken: null, heard: null };
}

/** `waits` is the entry that waits to be confirmed, `shown` the one that the screen showed when it was spoken of. */
type Here = {
  readonly desk: LiveJob;
  readonly now: number;
  readonly waits: number | null;
  readonly shown: number | null;
  readonly words: Words;
};

/** Understood words as a command or an answer; `wrong` says why they are neither. */
function asked(
  meant: Meaning,
  heard: string,
  { desk, now, waits, shown, words }: Here,
): { ask: Intent } | { tell: string; because: "question" } | { wrong: string } {
  const { zone } = desk.job.frozen.brief;
  const { errors, voice } = words;
  if ("intent" in meant) return { ask: meant.intent };
  if ("question" in meant) return { tell: answerTo(meant.question, meant.about, desk.job, words), because: "question" };
  if ("confirm" in meant) return { ask: { type: meant.confirm, target: (meant.confirm === "correct" ? shown : waits) ?? 0 } };
  if ("thunder" in meant) return { ask: { type: "reading", reading: { kind: "thunder", takenAt: now } } };
  if ("wind" in meant) {
    const { mph, gustMph, taken } = meant.wind;
    return {
      ask: { type: "reading", reading: { kind: "wind", mph, gustMph, takenAt: instantOf(taken, zone, now), place: "in the open" } },
    };
  }
  if ("wrongUnit" in meant) return { wrong: errors.wrongUnit(meant.wrongUnit.gave, meant.wrongUnit.wants) };
  if ("ambiguous" in meant) return { wrong: errors.ambiguous(choices(meant.ambiguous, words)) };
  if ("noSuchWind" in meant) return { wrong: errors.noSuchWind };
  if ("whichWay" in meant) return { wrong: errors.whichWay };
  if ("sayCorrect" in meant) return { wrong: voice.sayCorrect };
  const step = currentStep(desk.job);
  const ask = (step?.gate && wordsOf(step, words).ask?.(step.params)) || errors.sayOrPress;
  return { wrong: "elsewhere" in meant ? errors.elsewhere(heard, ask) : errors.notUnderstood(heard, ask) };
}

const choices = ({ n, unit }: Extract<Meaning, { ambiguous: unknown }>["ambiguous"], { quantity, voice }: Words): string =>
  n.map((value) => (unit === "mph" || unit === "count" ? String(value) : quantity(value, unit))).join(voice.or);

/** A press, or a script's command. */
function pressed(
  desks: LiveJobs,
  id: JobId,
  now: number,
  say: Exclude<Body["say"], { heard: string } | { alternatives: string[] }>,
): { ask: Intent; names?: Record<string, string> } {
  switch (say.type) {
    case "answer": {
      const gate = currentStep(desks.load(id).job)?.gate ?? null;
      return { ask: { ...say, value: toGateUnit(say.value, gate?.id === say.gate ? gate : null) } };
    }
    case "reading": {
      if (say.kind === "thunder") return { ask: { type: "reading", reading: { kind: "thunder", takenAt: now } } };
      const { mph, gustMph, place } = say;
      const takenAt = say.takenAt === null ? now : Date.parse(say.takenAt);
      return { ask: { type: "reading", reading: { kind: "wind", mph, gustMph, takenAt, place } } };
    }
    case "amend": {
      const { frozen, names } = desks.amendment(id, say.brief);
      return { ask: { type: "amend", because: say.because, to: frozen }, names };
    }
    default:
      return { ask: say };
  }
}
