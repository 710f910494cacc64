import type { Context } from "hono";
import type { LiveJob } from "../../machines/conversation/live-job.ts";
import type { Intent } from "../../machines/install/commands.ts";
import { currentStep } from "../../machines/install/job.ts";
import { mayAsk } from "../../machines/install/rights.ts";
import { holderOf } from "./screen.ts";

/** Whether whoever holds this screen may say something of this kind on a job, as long as that is not closed. */
export function mayHere(c: Context, live: LiveJob, type: Intent["type"]): boolean {
  const role = live.job.frozen.brief.crew.find(({ id }) => id === holderOf(c, live))?.role;
  return currentStep(live.job) !== null && role !== undefined && mayAsk(type).includes(role);
}
