import { amendmentEffect } from "../../machines/install/amend.ts";
import { changesOf } from "../../machines/install/changes.ts";
import { allSteps, type Job } from "../../machines/install/job.ts";
import type { Frozen } from "../../machines/install/step.ts";
import type { Effect } from "../pages/guide/state.ts";
import { callText } from "../text/replies.ts";
import type { Words } from "../text/words.ts";

/** What an amendment would change of a job as it stands, in words. */
export function effectText(job: Job, to: Frozen, name: (id: string) => string, words: Words): Effect {
  const { reopened, resumesAt } = amendmentEffect(job, to);
  const { answers, waived } = job.snapshot.context;
  const again = allSteps(job.frozen.script).filter(({ gate }) => gate && reopened.has(gate.id) && (answers[gate.id] || waived[gate.id]));
  return {
    changes: changesOf(job.frozen, to).map((change) => words.changeText(change, { name, zone: to.brief.zone })),
    asksAgain: again.map((step) => callText(step, words).ask?.(step.params) ?? step.id),
    resumesAt: callText(resumesAt, words).say(resumesAt.params),
  };
}
