import type { Person } from "../../machines/install/brief.ts";
import type { Intent } from "../../machines/install/commands.ts";
import type { Instant } from "../../machines/install/ids.ts";
import type { Job } from "../../machines/install/job.ts";
import { currentStep } from "../../machines/install/job.ts";
import type { Entries } from "../../machines/record/entries.ts";
import { crewMove } from "../../machines/rehearsal/crew-move.ts";
import { rightMove } from "../../machines/rehearsal/right-move.ts";
import { standOf } from "../../machines/rehearsal/site.ts";

/** Something that is said for somebody who is played, and how many seconds after what was said before. */
export type Played = { readonly by: Person; readonly intent: Intent; readonly afterS: number };
type Kept = { readonly job: Job; readonly entries: Entries };

/** What the crew or the site says by itself where a rehearsal stands; `null` where all wait for the lead, or it is no rehearsal. */
export function playedNext({ job, entries }: Kept, at: Instant): Played | null {
  const stand = standOf(job, entries);
  return stand && crewMove(stand, at);
}

/**
 * What is said before a rehearsal begins, for somebody who begins later in the job: all of it as it should be, by the lead where the
 * crew does not. `null` once it stands at the call that it begins at.
 */
export function playedBefore({ job, entries }: Kept, at: Instant): Played | null {
  const { brief } = job.frozen;
  const step = currentStep(job);
  if (!brief.practice || step === null || step.id === brief.practice.from) return null;
  const crew = playedNext({ job, entries }, at);
  if (crew) return crew;
  const right = rightMove(standOf(job, entries)!, at);
  if (!right) return null;
  const by = brief.crew.find(({ role }) => role === "lead")!;
  return right.type === "wait" ? { by, intent: { type: "note", text: "…" }, afterS: right.seconds } : { by, intent: right, afterS: 1 };
}
