import { answerTo } from "../../machines/conversation/answer-to.ts";
import { type Interpretation, interpret } from "../../machines/conversation/interpret.ts";
import type { LiveJob } from "../../machines/conversation/live-job.ts";
import { contextOf, replyTo } from "../../machines/conversation/reply-to.ts";
import type { CommandSource } from "../../machines/install/commands.ts";
import type { DeviceId, EntryNo } from "../../machines/install/ids.ts";
import { currentStep } from "../../machines/install/job.ts";
import type { CommandEntry, JobId } from "../../machines/record/entry.ts";
import { english } from "../../machines/speech/en/english.ts";
import type { Reason } from "../../views/pages/guide/state.ts";
import { answerText } from "../../views/text/en/answers.ts";
import { errors } from "../../views/text/en/errors.ts";
import { misunderstandingText, reasonText, replyText } from "../../views/text/en/replies.ts";
import { voice } from "../../views/text/en/voice.ts";
import { readIntent } from "../input/intent.ts";
import { Problem } from "../input/problem.ts";
import { readSay } from "../input/say.ts";
import { type LiveJobs, personOf, requestDigest } from "../jobs.ts";

/** How a command or a question went: what a screen buzzes and speaks by. */
export type Went = "done" | "refused" | "readBack" | "question" | "leftAlone" | "notUnderstood";

/** What a command or a question is answered with. `entry` is null where nothing was recorded; `heard` is what was taken from speech. */
export type Told = {
  readonly entry: EntryNo | null;
  readonly outcome: CommandEntry["outcome"] | null;
  readonly went: Went;
  readonly heard: string | null;
  readonly reply: string;
  readonly reasons: readonly Reason[];
  readonly phase: string;
  readonly step: string;
};

/** One thing said to a job, from raw body to reply. The same for pages, speech, typed words and office scripts. */
export function sayTo(jobs: LiveJobs, id: JobId, raw: unknown, from: { source: CommandSource; device: DeviceId }): Told {
  const body = readSay(raw);
  const request = requestDigest({ ...from, body });
  const live = jobs.load(id);
  const person = personOf(live, body.as);
  const before = jobs.repeated(id, body.key, request);
  if (before?.entry.kind === "command") return told(live, before.entry);
  const { said } = body;
  const pressed = said.by === "press" ? readIntent(said.press, live, jobs.now()) : null;
  const screen = { device: from.device, wakeWord: jobs.wakeWord, language: english };
  const meant = interpret(live.job, screen, said.by === "press" ? { by: "press", intent: pressed!.intent } : said, jobs.now());
  if (meant.is !== "command") return toldOnly(live, meant, jobs.wakeWord, said.by === "typing");
  const source = meant.spoken ?? (meant.heard === null ? from.source : "typed");
  const { key, seen } = body;
  const { entry } = jobs.say(id, meant.intent, { key, seen, as: person.id, source, device: from.device, heard: meant.heard, request });
  if (pressed?.names && "did" in entry.outcome) jobs.addNames(id, pressed.names);
  return told(jobs.load(id), entry);
}

/** What is said back where nothing was recorded. Typed words that mean nothing are a mistake in the request. */
function toldOnly(live: LiveJob, meant: Exclude<Interpretation, { is: "command" }>, wakeWord: string, typed: boolean): Told {
  const nothing = { entry: null, outcome: null, heard: meant.heard, reasons: [], ...whereIn(live) };
  switch (meant.is) {
    case "question":
      return { ...nothing, went: "question", reply: answerText(answerTo(meant.question, live.job)) };
    case "leftAlone":
      return { ...nothing, went: "leftAlone", reply: meant.because === "wakeWord" ? voice.sayFirst(wakeWord) : "" };
    case "notUnderstood": {
      const reply = misunderstandingText(meant.because, currentStep(live.job));
      if (typed) throw new Problem(422, `${reply} ${errors.nothingRecorded}`);
      return { ...nothing, went: "notUnderstood", reply };
    }
  }
}

/** What is said back to an entry. Told from the entry, so that a repeated key is answered alike. */
function told(live: LiveJob, entry: CommandEntry): Told {
  const { outcome, command, no, phase, step } = entry;
  const name = (id: string) => live.names[id] ?? id;
  const reply = replyTo(entry, contextOf(live, entry));
  const reasons = reply.is === "refused" ? reply.reasons : [];
  return {
    entry: no,
    outcome,
    went: reply.is === "refused" ? "refused" : reply.is === "readBack" ? "readBack" : "done",
    heard: command.heard,
    reply: replyText(reply, { name, zone: live.job.frozen.brief.zone }),
    reasons: reasons.map((reason) => ({
      ...("gate" in reason.refusal ? { gate: reason.refusal.gate } : {}),
      ...("status" in reason.refusal ? { status: reason.refusal.status } : {}),
      why: reason.refusal.why,
      text: reasonText(reason, name),
    })),
    phase,
    step,
  };
}

const whereIn = ({ job }: LiveJob) => ({ phase: currentStep(job)?.phase ?? "closed", step: currentStep(job)?.id ?? "closed" });
