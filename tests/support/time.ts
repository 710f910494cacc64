import type { Person } from "../../machines/install/brief.ts";
import { workOf } from "../../machines/install/quantities.ts";
import { scriptOf } from "../../machines/install/script.ts";
import type { Frozen, PhaseId } from "../../machines/install/step.ts";
import { PHASES } from "../../machines/install/step.ts";
import { PROCEDURE } from "../../machines/install/version.ts";
import type { Opening } from "../../machines/record/entry.ts";
import { startWorkTime, type WorkTime } from "../../machines/record/work-time.ts";
import { planTent } from "../../machines/tent/plan.ts";
import type { SpecInput } from "../../machines/tent/spec-input.ts";
import { estimate } from "../../machines/time/estimate.ts";
import type { Taught } from "../../machines/time/learning.ts";
import type { Standing } from "../../machines/time/place.ts";
import { type Phase, TIMED } from "../../machines/time/rates.ts";
import { eighty } from "../tent/tents.ts";
import { briefFor, type Changes } from "./briefs.ts";

const MINUTE = 60_000;

/** An invented job for a tent, with so many people on site. */
export function frozenWith(people: number, tent: SpecInput = eighty, changes: Changes = {}): Frozen {
  const crew = Array.from({ length: people }, (_, i): Person => ({ id: `p${i + 1}`, role: (["lead", "competent"] as const)[i] ?? "crew" }));
  const brief = briefFor(tent, { ...changes, crew });
  const plan = planTent(brief.tent);
  return { procedure: PROCEDURE, brief, plan, script: scriptOf(brief, plan) };
}

/** The assumed minutes of a phase, with the people on the brief. */
export function assumedMin(frozen: Frozen, phase: Phase): number {
  const { quantities, people } = workOf(frozen)!;
  const e = estimate(phase, quantities, people);
  if (e.is === "tooFew") throw new Error(`${phase} takes ${e.least}`);
  return e.minutes;
}

const unworked = (frozen: Frozen): WorkTime => startWorkTime({ opened: frozen, step: frozen.script.steps[0]!.id } as Opening);

/** A closed job whose phases took so many times the assumed minutes. */
export function finished(job: string, frozen: Frozen, times: number | ((phase: Phase) => number)): Taught {
  const byPhase = Object.fromEntries(
    TIMED.map((phase) => [phase, assumedMin(frozen, phase) * (typeof times === "number" ? times : times(phase)) * MINUTE]),
  );
  return { job, rehearsal: false, mismatch: null, phase: "closed", worked: { ...unworked(frozen), byPhase, done: PHASES } };
}

/** A job that stands at a call, with the minutes worked in the phase until it came there and since. Earlier phases took what was assumed. */
export function standingAt(frozen: Frozen, step: string, spent: { before?: number; atCall?: number } = {}): Standing {
  const phase = frozen.script.steps.find((s) => s.id === step)!.phase as PhaseId;
  const done = PHASES.slice(0, PHASES.indexOf(phase));
  const minutes: Record<string, number> = { [phase]: (spent.before ?? 0) + (spent.atCall ?? 0) };
  for (const p of done) if (p !== "standing") minutes[p] = assumedMin(frozen, p);
  const byPhase = Object.fromEntries(Object.entries(minutes).map(([p, min]) => [p, min * MINUTE]));
  return { phase, no: 50, lastAt: 0, worked: { ...unworked(frozen), step, byPhase, done, atCallMs: (spent.atCall ?? 0) * MINUTE } };
}

/** A job that was opened and to which nothing was said yet. */
export const unstarted = (frozen: Frozen): Standing => ({
  phase: "utilitiesMarked",
  no: 1,
  lastAt: 0,
  worked: unworked(frozen),
});
