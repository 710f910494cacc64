import type { BindingIntent, Intent, Spoken } from "../install/commands.ts";
import type { Unit } from "../install/gates.ts";
import type { DeviceId, EntryNo, Instant } from "../install/ids.ts";
import { attentionState, currentStep, type Job } from "../install/job.ts";
import { pendingReadBack } from "../install/read-back.ts";
import { hear, type Utterance } from "../speech/hear.ts";
import type { Language } from "../speech/language.ts";
import type { Meaning } from "../speech/meanings.ts";
import type { Question } from "../speech/question.ts";
import { instantOf } from "./clock.ts";

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
  | { readonly why: "noSuchWind" }
  | { readonly why: "whichWay" }
  | { readonly why: "sayCorrect" }
  /** Another place than the one that is asked was named; or these words mean nothing at this call. */
  | { readonly why: "elsewhere" | "noMeaning"; readonly words: string };

/** What something said comes to. `heard` are the words it was taken from; `null` for a press. */
export type Interpretation =
  | { readonly is: "command"; readonly intent: Intent; readonly spoken: Spoken | null; readonly heard: string | null }
  | { readonly is: "question"; readonly question: Question; readonly heard: string }
  | { readonly is: "notUnderstood"; readonly because: Misunderstanding; readonly heard: string }
  | { readonly is: "leftAlone"; readonly because: "chatter" | "wakeWord"; readonly heard: string };

/** What somebody said or pressed means at a job as it stands at a moment. Pure: the same in, the same out. */
export function interpret(job: Job, screen: Screen, said: Said, at: Instant): Interpretation {
  if (said.by === "press") return { is: "command", intent: said.intent, spoken: null, heard: null };
  const step = currentStep(job);
  const pending = pendingReadBack(job, screen.device, at)?.entry ?? null;
  const here = { zone: job.frozen.brief.zone, at, pending };
  const { language, wakeWord } = screen;
  if (said.by === "typing")
    return meaning(
      language.understand(said.words, step),
      { words: said.words, spoken: null, readBack: false },
      { ...here, shown: pending },
    );
  const heard = hear(said, { step, attention: attentionState(job), waiting: pending !== null, wakeWord, language });
  if ("leftAlone" in heard) return { is: "leftAlone", because: heard.leftAlone, heard: heard.words };
  const { words, source: spoken, readBack } = heard;
  return meaning(heard.meant, { words, spoken, readBack }, { ...here, shown: said.readBack });
}

/** The words, by which way they were spoken, and whether they are read back before they count. */
type Heard = { readonly words: string; readonly spoken: Spoken | null; readonly readBack: boolean };
/** `pending` is the entry that waits to be confirmed, `shown` the one that the screen showed when the words began. */
type Here = { readonly zone: string; readonly at: Instant; readonly pending: EntryNo | null; readonly shown: EntryNo | null };

function meaning(meant: Meaning, { words, spoken, readBack }: Heard, here: Here): Interpretation {
  if ("question" in meant) return { is: "question", question: meant.question, heard: words };
  const intent = intentOf(meant, here);
  if (!intent) return { is: "notUnderstood", because: misunderstanding(meant, words), heard: words };
  const stated: Intent = readBack ? { type: "readBack", intent: intent as BindingIntent } : intent;
  return { is: "command", intent: stated, spoken, heard: words };
}

function intentOf(meant: Meaning, { zone, at, pending, shown }: Here): Intent | null {
  if ("intent" in meant) return meant.intent;
  if ("remark" in meant) return { type: "note", text: meant.remark };
  if ("confirm" in meant) return { type: meant.confirm, target: (meant.confirm === "correct" ? shown : pending) ?? 0 };
  if ("thunder" in meant) return { type: "reading", reading: { kind: "thunder", takenAt: at } };
  if (!("wind" in meant)) return null;
  const { mph, gustMph, taken } = meant.wind;
  return { type: "reading", reading: { kind: "wind", mph, gustMph, takenAt: instantOf(taken, zone, at), place: null } };
}

function misunderstanding(meant: Meaning, words: string): Misunderstanding {
  if ("wrongUnit" in meant) return { why: "wrongUnit", ...meant.wrongUnit };
  if ("ambiguous" in meant) return { why: "ambiguous", ...meant.ambiguous };
  if ("noSuchWind" in meant) return { why: "noSuchWind" };
  if ("whichWay" in meant) return { why: "whichWay" };
  if ("sayCorrect" in meant) return { why: "sayCorrect" };
  return { why: "elsewhere" in meant ? "elsewhere" : "noMeaning", words };
}
