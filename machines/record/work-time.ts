import type { StepId } from "../install/ids.ts";
import { type Work, workOf } from "../install/quantities.ts";
import { type Frozen, PHASES, type PhaseId } from "../install/step.ts";
import type { CommandEntry, Opening } from "./entry.ts";

/**
 * Longest time between two entries that is taken for work, in milliseconds: 90 minutes. An edge of stakes is driven without
 * a word to the guide; a night, or a day's rain, is longer. A meal is shorter and counts. Common practice, no source.
 */
export const MAX_WORK_GAP_MS = 90 * 60_000;

/** What a fold keeps of a job's time. Plain JSON. */
export type WorkTime = {
  /** Milliseconds of work by the phase that the guide stood in; making safe on its own. */
  readonly byPhase: Readonly<Record<string, number>>;
  /** Of that, at the call the guide stands at now. */
  readonly atCallMs: number;
  readonly step: StepId;
  readonly held: boolean;
  /** Phases that were gone on from, and not gone back into since. */
  readonly done: readonly PhaseId[];
  /** What there is to do by the script in force; `null` where its plan cannot be counted. */
  readonly work: Work | null;
};
type Stay = { readonly phase: string; readonly lastAt: number; readonly no: number; readonly worked: WorkTime };

/** Nothing worked yet. */
export const startWorkTime = (entry: Opening): WorkTime => ({
  byPhase: {},
  atCallMs: 0,
  step: entry.step,
  held: false,
  done: [],
  work: workOf(entry.opened),
});

/** The same with one entry more. `now` is where the guide stands after it; `changed` the script that it put in force, if it did. */
export function addWorkTime(before: Stay, entry: CommandEntry, now: string, changed: Frozen | null): WorkTime {
  const { worked } = before;
  const ms = workBetween(before, entry.at);
  return {
    byPhase: ms === 0 ? worked.byPhase : { ...worked.byPhase, [before.phase]: (worked.byPhase[before.phase] ?? 0) + ms },
    atCallMs: entry.step === worked.step ? worked.atCallMs + ms : 0,
    step: entry.step,
    held: heldAfter(worked.held, entry),
    done: doneAfter(worked.done, before.phase, entry, now),
    work: changed ? workOf(changed) : worked.work,
  };
}

/**
 * Work from a job's last entry to a moment, in milliseconds. None while it is held or closed, none before anybody has said
 * anything (a job may be opened in the office, days before), and none over a gap too long to be work. A pause is work: it
 * is over in a moment.
 */
export function workBetween({ phase, lastAt, no, worked }: Stay, at: number): number {
  const ms = Math.max(0, at - lastAt);
  return worked.held || phase === "closed" || no === 1 || ms > MAX_WORK_GAP_MS ? 0 : ms;
}

function heldAfter(held: boolean, { outcome }: CommandEntry): boolean {
  if (!("did" in outcome)) return held;
  return outcome.did === "held" || (held && outcome.did !== "carriedOn");
}

/** A phase is done when "next" led out of it; going back into it, by word or by a changed plan, undoes that. Standing down finishes nothing. */
function doneAfter(done: WorkTime["done"], from: string, { outcome }: CommandEntry, to: string): WorkTime["done"] {
  if (from === to || !("did" in outcome) || outcome.did === "standingDown") return done;
  const finished = PHASES.find((p) => p === from);
  if (to === "closed") return finished === "struck" && outcome.did === "closed" ? [...done, finished] : done;
  const at = PHASES.indexOf(to as PhaseId);
  if (at < 0) return done;
  const still = done.filter((p) => PHASES.indexOf(p) < at && p !== finished);
  return finished && outcome.did === "moved" ? [...still, finished] : still;
}
