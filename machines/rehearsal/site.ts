import type { Job } from "../install/job.ts";
import type { Frozen } from "../install/step.ts";
import { effectiveCommandBy } from "../record/effective-command.ts";
import { type Entries, lookupIn } from "../record/entries.ts";
import type { Entry } from "../record/entry.ts";
import type { Stand } from "./stand.ts";
import { storyOf } from "./story.ts";
import { type Line, UNTOUCHED, worldAfter } from "./world.ts";

/** A rehearsal as it stands, from its job and its record; `null` where it is none that answers back. */
export function standOf(job: Job, entries: Entries): Stand | null {
  const { practice } = job.frozen.brief;
  if (!practice) return null;
  const scenes = storyOf(job.frozen);
  const earlier = lookupIn(entries);
  let world = UNTOUCHED;
  for (const { entry } of entries) world = worldAfter(world, scenes, lineOf(entry, earlier));
  return { job, world, scenes, seed: practice.seed };
}

/** An entry as the site sees it. */
export function lineOf(entry: Entry, earlier: ReturnType<typeof lookupIn>): Line {
  const { step, at } = entry;
  if (entry.kind === "opening") return { command: null, outcome: null, step, at };
  return { command: effectiveCommandBy(entry, earlier), outcome: entry.outcome, step, at };
}

/** Whether a job is a rehearsal that answers back. */
export const answersBack = ({ brief }: Frozen): boolean => brief.practice !== undefined;
