import type { CommandSource } from "../../machines/install/commands.ts";
import type { DeviceId } from "../../machines/install/ids.ts";
import { currentStep } from "../../machines/install/job.ts";
import type { CommandEntry, JobId } from "../../machines/record/entry.ts";
import type { Reason } from "../../views/pages/guide/state.ts";
import { replyTo } from "../../views/reply.ts";
import type { Words } from "../../views/text/words.ts";
import { readSay } from "../input/say.ts";
import { type LiveJob, type LiveJobs, personOf, requestDigest } from "../jobs.ts";
import { meaningOf } from "../meaning.ts";

/** How a command or a question went: what a screen buzzes and speaks by. */
export type Went = "done" | "refused" | "readBack" | "question" | "leftAlone" | "notCaught";

/** What a command or a question is answered with. `entry` is null where nothing was recorded; `heard` is what was taken from speech. */
export type Reply = {
  readonly entry: number | null;
  readonly outcome: CommandEntry["outcome"] | null;
  readonly went: Went;
  readonly heard: string | null;
  readonly reply: string;
  readonly reasons: readonly Reason[];
  readonly phase: string;
  readonly step: string;
};

/** One thing said to a job, from raw body to reply. The same for pages, speech, typed words and office scripts. */
export function sayTo(desks: LiveJobs, id: JobId, raw: unknown, from: { source: CommandSource; device: DeviceId }, words: Words): Reply {
  const body = readSay(raw);
  const request = requestDigest({ ...from, body });
  const desk = desks.load(id);
  const person = personOf(desk, body.as);
  const before = desks.repeated(id, body.key, request);
  if (before?.entry.kind === "command") return replyOf(desk, before.entry, words);
  const meant = meaningOf(desks, id, from.device, body, words);
  if ("tell" in meant)
    return { entry: null, outcome: null, went: meant.because, heard: meant.heard, reply: meant.tell, reasons: [], ...where(desk) };
  const said = desks.say(id, meant.ask, {
    key: body.key,
    seen: body.seen,
    as: person.id,
    source: meant.spoken ?? (meant.heard === null ? from.source : "typed"),
    device: from.device,
    heard: meant.heard,
    request,
  });
  if (meant.names && "did" in said.entry.outcome) desks.addNames(id, meant.names);
  return replyOf(desks.load(id), said.entry, words);
}

function replyOf(desk: LiveJob, entry: CommandEntry, words: Words): Reply {
  const { outcome } = entry;
  const told = replyTo(entry, desk, (id) => desk.names[id] ?? id, words);
  const went = "refused" in outcome ? "refused" : outcome.did === "readBack" ? "readBack" : "done";
  return { entry: entry.no, outcome, went, heard: entry.command.heard, ...told, phase: entry.phase, step: entry.step };
}

const where = ({ job }: LiveJob) => ({ phase: currentStep(job)?.phase ?? "closed", step: currentStep(job)?.id ?? "closed" });
