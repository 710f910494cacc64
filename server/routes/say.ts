import type { CommandSource } from "../../machines/install/commands.ts";
import type { DeviceId } from "../../machines/install/ids.ts";
import { currentStep } from "../../machines/install/job.ts";
import type { CommandEntry, JobId } from "../../machines/record/entry.ts";
import type { Reason } from "../../views/pages/guide/state.ts";
import { replyTo } from "../../views/reply.ts";
import { label } from "../../views/text/en/page.ts";
import { didText } from "../../views/text/en/refusals.ts";
import { readSay } from "../input/say.ts";
import type { LiveJobs, Said } from "../jobs.ts";
import type { LiveJob } from "../live-job.ts";
import { type Meant, meaningOf } from "../meaning.ts";
import { requestDigest } from "../next-entry.ts";

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

type Told = Extract<Meant, { tell: string }>;

/**
 * One thing said to a job, from raw body to reply, with the job as it stands then. The same for pages, speech, typed words and
 * office scripts.
 */
export async function sayTo(
  desks: LiveJobs,
  id: JobId,
  raw: unknown,
  from: { source: CommandSource; device: DeviceId },
): Promise<{ live: LiveJob; reply: Reply }> {
  const body = readSay(raw);
  const { key, seen, as } = body;
  const said = await desks.say<Told>(id, { key, seen, as, device: from.device, request: requestDigest({ ...from, body }) }, (live) => {
    const meant = meaningOf(desks, live, from.device, body);
    if ("tell" in meant) return { tell: meant };
    return { ...meant, source: meant.spoken ?? (meant.heard === null ? from.source : "typed") };
  });
  return { live: said.live, reply: replyOf(said) };
}

function replyOf(said: Said<Told>): Reply {
  const { live } = said;
  const name = (id: string) => live.names[id] ?? id;
  if ("tell" in said) {
    const { tell, because, heard } = said.tell;
    return { entry: null, outcome: null, went: because, heard, reply: tell, reasons: [], ...where(live) };
  }
  if ("unrecorded" in said) {
    const { is, why } = said.unrecorded;
    return {
      entry: null,
      outcome: { did: is },
      went: "done",
      heard: said.heard,
      reply: `${didText(is)} ${label.unrecorded(why)}`,
      reasons: [],
      ...where(live),
    };
  }
  const { entry } = said;
  const { outcome, command, no, phase, step } = entry;
  const went = "refused" in outcome ? "refused" : outcome.did === "readBack" ? "readBack" : "done";
  return { entry: no, outcome, went, heard: command.heard, ...replyTo(entry, live, name), phase, step };
}

const where = ({ job }: LiveJob) => ({ phase: currentStep(job)?.phase ?? "closed", step: currentStep(job)?.id ?? "closed" });
