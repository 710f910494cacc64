import { amendmentEffect } from "../../machines/install/amend.ts";
import { changesOf } from "../../machines/install/changes.ts";
import { type Job, stepsIn } from "../../machines/install/job.ts";
import { indexOf } from "../../machines/install/script-index.ts";
import type { Frozen } from "../../machines/install/step.ts";
import type { Effect } from "../pages/guide/state.ts";
import { askText, sayText } from "../text/replies.ts";
import type { Words } from "../text/words.ts";

/** What an amendment would change of a job as it stands, in words. */
export function effectText(job: Job, to: Frozen, name: (id: string) => string, words: Words): Effect {
  const { reopened, added, goesOnAt } = amendmentEffect(job, to);
  const { questions } = indexOf(to.script);
  const { byId } = stepsIn(to.script);
  return {
    changes: changesOf(job.frozen, to).map((change) => words.changeText(change, { name, zone: to.brief.zone })),
    asksAgain: [...reopened].flatMap((id) => questions.get(id) ?? []).map((q) => askText(q, words) ?? sayText(q, words)),
    added: added.flatMap((id) => byId.get(id) ?? []).map((step) => sayText(step, words)),
    goesOnAt: sayText(goesOnAt, words),
  };
}
