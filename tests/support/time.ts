import type { Person } from "../../machines/install/brief.ts";
import { freeze } from "../../machines/install/freeze.ts";
import { workOf } from "../../machines/install/quantities.ts";
import type { Frozen, PhaseId } from "../../machines/install/step.ts";
import { PHASES } from "../../machines/install/step.ts";
import type { Opening } from "../../machines/record/entry.ts";
import { startWorkTime, type WorkTime } from "../../machines/record/work-time.ts";
import type { SpecInput } from "../../machines/tent/spec-input.ts";
import { estimate } from "../../machines/time/estimate.ts";
import type { JobProgress } from "../../machines/time/job-stage.ts";
import type { JobHistory } from "../../machines/time/learning.ts";
import { type Phase, TIMED_PHASES } from "../../machines/time/rates.ts";
import { eighty } from "../tent/tents.ts";
import { briefFor, type Changes } from "./briefs.ts";

const MINUTE = 60_000;

/** An invented job for a tent, with so many people on site. */
export function frozenWith(people: number, tent: SpecInput = eighty, changes: Changes = {}): Frozen {
  const crew = Array.from({ length: people }, (_, i): Person => ({ id: `p${i + 1}`, role: (["lead", "competent"] as const)[i] ?? "crew" }));
  return freeze(briefFor(tent, { ...changes, crew }));
}

const assumed = new WeakMap<Frozen, Map<Phase, number>>();

/** The assumed minutes of a phase, with the people on the brief; worked out once for each tent, as simulations ask by the thousand. */
export function assumedMin(frozen: Frozen, phase: Phase): number {
  const known = assumed.get(frozen) ?? new Map<Phase, number>();
  assumed.set(frozen, known);
  const minutes = known.get(phase) ?? estimatedMin(frozen, phase);
  known.set(phase, minutes);
  return minutes;
}

function estimatedMin(frozen: Frozen, phase: Phase): number {
  const { quantities, people } = workOf(frozen)!;
  const e = estimate(phase, quantities, people);
  if (e.is === "tooFew") throw new Error(`${phase} takes ${e.minPeople}`);
  return e.minutes;
}

const unworked = (frozen: Frozen): WorkTime => startWorkTime({ opened: frozen, step: frozen.script.steps[0]!.id } as Opening);

/** A closed job whose phases took so many times the assumed minutes. */
export function finished(job: string, frozen: Frozen, times: number | ((phase: Phase) => number)): JobHistory {
  const byPhase = Object.fromEntries(
    TIMED_PHASES.map((phase) => [phase, assumedMin(frozen, phase) * (typeof times === "number" ? times : times(phase)) * MINUTE]),
  );
  return { job, rehearsal: false, mismatch: null, phase: "closed", worked: { ...unworked(frozen), byPhase, done: PHASES } };
}

/** A job that stands at a call, with the minutes worked in the phase until it came there and since. Earlier phases took what was assumed. */
export function standingAt(frozen: Frozen, step: string, spent: { before?: number; atCall?: number } = {}): JobProgress {
  const phase = frozen.script.steps.find((s) => s.id === step)!.phase as PhaseId;
  const done = PHASES.slice(0, PHASES.indexOf(phase));
  const minutes: Record<string, number> = { [phase]: (spent.before ?? 0) + (spent.atCall ?? 0) };
  for (const p of done) if (p !== "standing") minutes[p] = assumedMin(frozen, p);
  const byPhase = Object.fromEntries(Object.entries(minutes).map(([p, min]) => [p, min * MINUTE]));
  return { phase, no: 50, lastAt: 0, worked: { ...unworked(frozen), step, byPhase, done, atCallMs: (spent.atCall ?? 0) * MINUTE } };
}

/** A job that was opened and to which nothing was said yet. */
export const unstarted = (frozen: Frozen): JobProgress => ({
  phase: "utilitiesMarked",
  no: 1,
  lastAt: 0,
  worked: unworked(frozen),
});
