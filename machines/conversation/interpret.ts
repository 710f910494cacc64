import { digest } from "../digest/digest.ts";
import type { BindingIntent, Intent, Spoken } from "../install/commands.ts";
import type { Unit } from "../install/gates.ts";
import type { DeviceId, EntryNo, Instant } from "../install/ids.ts";
import { attentionState, currentStep, type Job, questionAt } from "../install/job.ts";
import { pendingReadBack } from "../install/read-back.ts";
import type { JobState } from "../install/state.ts";
import { instantAt, wallTime } from "../install/wall-time.ts";
import { hear, type Utterance } from "../speech/hear.ts";
import type { Language } from "../speech/language.ts";
import type { Listening } from "../speech/listening.ts";
import type { Meaning } from "../speech/meanings.ts";
import type { Question } from "../speech/question.ts";
import { instantOf } from "./clock.ts";
import { foundIntent, foundMeant } from "./found-meant.ts";
import { thingMeant } from "./thing-meant.ts";

/** Where something was said: the device, and how it is listened to. */
export type Screen = { readonly device: DeviceId; readonly wakeWord: string; readonly language: Language };

/** What came in, parsed and not understood yet. A press, or a script's command, says what it is. */
export type Said =
  /** `readBack` is the entry whose read-back the screen showed when the speech began: what "correct" means. */
  | ({ readonly by: "voice"; readonly readBack: EntryNo | null } & Utterance)
  | { readonly by: "typing"; readonly words: string }
  | { readonly by: "press"; readonly intent: Intent };

/** Why words were no command and no question. */
export type Misunderstanding =
  | { readonly why: "wrongUnit"; readonly gave: string; readonly wants: string }
  | { readonly why: "ambiguous"; readonly n: readonly number[]; readonly unit: Unit | "mph" | "count" }
  | { readonly why: "noSuchWind" | "noSuchAir" }
  | { readonly why: "sayCorrect" }
  /** Another place than the one that is asked was named; or these words mean nothing at this call. */
  | { readonly why: "elsewhere" | "noMeaning"; readonly words: string };

/** What something said comes to. `heard` are the words it was taken from; `null` for a press. */
export type Interpretation =
  | { readonly is: "command"; readonly intent: Intent; readonly spoken: Spoken | null; readonly heard: string | null }
  /** The lead for somebody, as they were called: who that is, and whether they may, is looked up where people have names. */
  | { readonly is: "handOver"; readonly handOver: string; readonly spoken: Spoken | null; readonly heard: string }
  | { readonly is: "question"; readonly question: Question; readonly heard: string }
  | { readonly is: "notUnderstood"; readonly because: Misunderstanding; readonly heard: string }
  | { readonly is: "leftAlone"; readonly because: "chatter" | "wakeWord"; readonly heard: string };

/** What somebody said or pressed means at a job as it stands at a moment. Pure: the same in, the same out. */
export function interpret(job: Job, screen: Screen, said: Said, at: Instant): Interpretation {
  if (said.by === "press") return { is: "command", intent: said.intent, spoken: null, heard: null };
  const listening: Listening = { step: currentStep(job), asks: questionAt(job, at) };
  const waits = pendingReadBack(job, screen.device, at);
  const pending = waits?.entry ?? null;
  const here = { job, zone: job.frozen.brief.zone, at, clocks: job.snapshot.context, pending, readBack: waits?.intent ?? null };
  const { language, wakeWord } = screen;
  if (said.by === "typing")
    return meaning(
      language.understand(said.words, listening),
      { words: said.words, spoken: null, readBack: false },
      { ...here, shown: pending },
    );
  const { stopGustMph } = job.snapshot.context.limits;
  const heard = hear(said, { listening, attention: attentionState(job), waiting: pending !== null, wakeWord, stopGustMph, language });
  if ("leftAlone" in heard) return { is: "leftAlone", because: heard.leftAlone, heard: heard.words };
  const { words, source: spoken, readBack } = heard;
  return meaning(heard.meant, { words, spoken, readBack }, { ...here, shown: said.readBack });
}

/** The words, by which way they were spoken, and whether they are read back before they count. */
type Heard = { readonly words: string; readonly spoken: Spoken | null; readonly readBack: boolean };
/** `pending` is the entry that waits to be confirmed, `shown` the one that the screen showed when the words began. */
type Here = {
  readonly job: Job;
  readonly zone: string;
  readonly at: Instant;
  readonly clocks: Pick<JobState, "wallAheadMs">;
  readonly pending: EntryNo | null;
  readonly shown: EntryNo | null;
  readonly readBack: BindingIntent | null;
};

function meaning(meant: Meaning, { words, spoken, readBack }: Heard, here: Here): Interpretation {
  if ("question" in meant) return { is: "question", question: meant.question, heard: words };
  if ("handOver" in meant) return { is: "handOver", handOver: meant.handOver, spoken, heard: words };
  const intent = intentOf(meant, here);
  if (!intent) return { is: "notUnderstood", because: misunderstanding(meant, words), heard: words };
  const stated: Intent = readBack ? { type: "readBack", intent: intent as BindingIntent } : intent;
  return { is: "command", intent: stated, spoken, heard: words };
}

function intentOf(meant: Meaning, { job, zone, at, clocks, pending, shown, readBack }: Here): Intent | null {
  if ("intent" in meant) return meant.intent;
  if ("remark" in meant) return { type: "note", text: meant.remark };
  if ("confirm" in meant) return { type: meant.confirm, target: (meant.confirm === "correct" ? shown : pending) ?? 0 };
  // The same once more confirms it; anything else is said again.
  if ("restated" in meant)
    return readBack !== null && digest.of(meant.restated) === digest.of(readBack) ? { type: "correct", target: shown ?? 0 } : null;
  if ("everybodyOut" in meant) return { type: "makeSafe", because: meant.everybodyOut };
  if ("hurt" in meant) return { type: "hurt", words: meant.hurt };
  if ("outOfUse" in meant) return { type: "outOfUse", thing: thingMeant(job, meant.outOfUse, false), because: meant.because };
  if ("backInUse" in meant) return { type: "backInUse", thing: thingMeant(job, meant.backInUse, true), because: meant.because };
  if ("found" in meant) return foundIntent(job.frozen, foundMeant(meant.found));
  if ("thunder" in meant)
    return {
      type: "reading",
      reading: { kind: "thunder", takenAt: at, ...(meant.seconds === undefined ? {} : { seconds: meant.seconds }) },
    };
  if ("heat" in meant) return { type: "reading", reading: { kind: "heat", ...meant.heat, takenAt: at } };
  if ("cold" in meant) return { type: "reading", reading: { kind: "cold", ...meant.cold, takenAt: at } };
  if ("warning" in meant) {
    const { warning: _, ...told } = meant;
    return { type: "reading", reading: { kind: "warning", takenAt: at, ...told } };
  }
  if ("rain" in meant) return { type: "reading", reading: { kind: "rain", takenAt: at } };
  if ("noThunder" in meant) return { type: "reading", reading: { kind: "noThunder", takenAt: at, because: meant.noThunder } };
  if (!("wind" in meant)) return null;
  const { mph, gustMph, fromDeg, taken, look, exposure } = meant.wind;
  const takenAt = instantAt(instantOf(taken, zone, wallTime(at, clocks)), clocks);
  const besides = { ...(look ? { look } : {}), ...(exposure ? { exposure } : {}) };
  return { type: "reading", reading: { kind: "wind", mph, gustMph, fromDeg, takenAt, place: null, ...besides } };
}

function misunderstanding(meant: Meaning, words: string): Misunderstanding {
  if ("wrongUnit" in meant) return { why: "wrongUnit", ...meant.wrongUnit };
  if ("ambiguous" in meant) return { why: "ambiguous", ...meant.ambiguous };
  if ("noSuchWind" in meant) return { why: "noSuchWind" };
  if ("noSuchAir" in meant) return { why: "noSuchAir" };
  if ("sayCorrect" in meant) return { why: "sayCorrect" };
  return { why: "elsewhere" in meant ? "elsewhere" : "noMeaning", words };
}
