import type { Hash } from "../machines/digest/digest.ts";
import type { DeviceId, WallTime } from "../machines/install/ids.ts";
import { NO_ENTRY } from "../machines/record/entry.ts";
import { type FollowUp, sealFollowUp } from "../machines/record/follow-up.ts";
import type { FollowUpInput } from "./input/follow-up.ts";
import { Problem } from "./input/problem.ts";
import type { Journal } from "./journal/journal.ts";
import { FollowUpConflict } from "./journal/oversight.ts";
import { createQueues } from "./queues.ts";

type From = { readonly request: Hash; readonly device: DeviceId; readonly at: WallTime };

/** What a manager says of findings, one after the other: the one place where their stream is written. */
export function createFollowUps({ oversight, names }: Pick<Journal, "oversight" | "names">) {
  const inTurn = createQueues();

  /** Writes it. A key writes once, however often it comes. Rejects with a Problem, or with NotWritten. */
  const say = (said: FollowUpInput, from: From): Promise<FollowUp> =>
    inTurn("", async () => {
      const { key, job, kind, entry, is, text, who } = said;
      const before = await oversight.keyedFollowUp(key);
      if (before && before.entry.request !== from.request) throw new Problem(409, (w) => w.errors.keyUsed(key));
      if (before) return before.entry;
      const finding = { job, kind, entry };
      if (!(await oversight.finding(finding))) throw new Problem(404, (w) => w.findings.noFinding);
      if (who !== null && !Object.hasOwn(await names(job), who))
        throw new Problem(422, (w) => w.findings.wrongFollowUp, { who: (w) => w.findings.noPerson(who) });
      const last = await oversight.lastFollowUp();
      const { no, prev } = last ? { no: last.entry.no + 1, prev: last.hash } : { no: 1, prev: NO_ENTRY };
      const next = sealFollowUp({ schema: 1, no, prev, key, ...from, finding, is, text, who });
      try {
        await oversight.appendFollowUp(next);
      } catch (error) {
        if (error instanceof FollowUpConflict) throw new Problem(409, (w) => w.findings.moved);
        throw error;
      }
      return next.entry;
    });
  return { say };
}
