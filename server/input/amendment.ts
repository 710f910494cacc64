import type { LiveJob } from "../../machines/conversation/live-job.ts";
import { freeze } from "../../machines/install/freeze.ts";
import { currentStep, type Job } from "../../machines/install/job.ts";
import { foldName } from "../../machines/install/person-name.ts";
import { keyOf } from "../../machines/record/entry.ts";
import { type Parsed, readBrief } from "./brief.ts";
import { keptParts, siteUnder } from "./brief-parts.ts";
import { Problem } from "./problem.ts";

/** Throws a Problem where a job is closed: nothing of it changes any more. */
export function refuseIfClosed(job: Job): void {
  if (!currentStep(job)) throw new Problem(409, (w) => w.guide.closed);
}

/** Throws a Problem where another change waits for a second person already: it would be pushed aside unseen. The same one, sent twice, is no other. */
export function refuseIfWaiting({ job, entries }: LiveJob, key: string | undefined): void {
  const { proposed } = job.snapshot.context;
  const waits = proposed && entries.at(proposed.entry - 1);
  if (waits && keyOf(waits.entry) !== key) throw new Problem(409, (w) => w.facts.oneAtATime);
}

/** A brief as changed by an amendment of a job. People keep their ids by name; a new name gets the next one. Throws a Problem. */
export function readAmendment({ job, names }: LiveJob, input: unknown): Parsed {
  const parsed = readBrief(input);
  const known = new Map(Object.entries(names).map(([person, name]) => [foldName(name), person]));
  let last = Math.max(0, ...Object.keys(names).map((p) => Number(p.slice(1))));
  const ids = new Map(Object.entries(parsed.names).map(([person, name]) => [person, known.get(foldName(name)) ?? `p${++last}`]));
  const crew = parsed.frozen.brief.crew.map((p) => ({ ...p, id: ids.get(p.id)! }));
  // A rehearsal stays one, and a real job never becomes one.
  const { rehearsal: _, ...amended } = parsed.frozen.brief;
  const { rehearsal } = job.frozen.brief;
  const brief = { ...amended, ...(rehearsal ? { rehearsal } : {}), crew };
  const { siteModel, ...others } = keptParts(job.frozen.brief, input);
  const kept = siteModel ? { ...others, siteModel: siteUnder(siteModel, brief.tent) } : others;
  return {
    // Calls and limits follow from the parts that stay, too.
    frozen: Object.keys(kept).length > 0 ? freeze({ ...brief, ...kept }) : { ...parsed.frozen, brief },
    names: Object.fromEntries(Object.entries(parsed.names).map(([person, name]) => [ids.get(person)!, name])),
  };
}
