import { digest } from "../digest/digest.ts";
import type { Instant } from "../install/ids.ts";
import { attentionState, currentStep, type Job } from "../install/job.ts";
import { peopleUnder } from "../install/missing.ts";
import type { Work } from "../install/step.ts";
import { weatherAt } from "../install/weather.ts";
import type { Entries } from "../record/entries.ts";
import type { Sealed } from "../record/entry.ts";
import { askable, questionFor } from "./questions/items.ts";
import type { Question } from "./questions/question.ts";
import { seeded } from "./seeded.ts";

/** A trainee is asked something after so many moves of the procedure. Common practice, no source. */
export const ASIDE_EVERY = 5;
/** Work during which nobody's eyes are on a phone. */
const HANDS_FULL: ReadonlySet<Work | null> = new Set<Work | null>(["lift", "under", "ease", "lower"]);

/** A question beside the guide: its id is the same on every phone until the job moves on. */
export type Aside = { readonly id: string; readonly question: Question };

const hasMoved = ({ entry }: Sealed): boolean =>
  entry.kind === "command" && "did" in entry.outcome && (entry.outcome.did === "moved" || entry.outcome.and === "moved");

/** How often a job has moved on, and the entry that did so last. */
function movesIn(entries: Entries): { readonly moves: number; readonly last: number } {
  let moves = 0;
  let last = 0;
  for (const line of entries)
    if (hasMoved(line)) {
      moves++;
      last = line.entry.no;
    }
  return { moves, last };
}

/**
 * The question that a trainee is asked beside a call, after every fifth move, from the phase that the job is in; `null` at most
 * calls, and wherever anything is held, stopped, made safe or being lifted. It follows from the record, and is in none.
 */
export function asideAt(job: Job, entries: Entries, at: Instant): Aside | null {
  const step = currentStep(job);
  const { context } = job.snapshot;
  const { script } = job.frozen;
  if (!step || HANDS_FULL.has(step.work) || attentionState(job) !== "working" || context.hurt || context.resumeAt !== null) return null;
  if (weatherAt(context, at) === "stop" || peopleUnder(script, context)) return null;
  const { moves, last } = movesIn(entries);
  if (moves === 0 || moves % ASIDE_EVERY !== 0) return null;
  const id = `aside-${entries.at(0)!.entry.job}-${last}`;
  const random = seeded(Number.parseInt(digest.of(id).slice(0, HEX_OF_31_BITS), 16), "aside");
  const items = askable(job.frozen).filter(({ phase, kind }) => phase === step.phase && kind !== "place" && kind !== "order");
  if (items.length === 0) return null;
  const question = questionFor(job.frozen, random.pick(items).id, random.int(0, 2 ** 31 - 1));
  return question && { id, question };
}
const HEX_OF_31_BITS = 7;
