import { digest } from "../digest/digest.ts";
import { kindOf } from "./checks/registry.ts";
import type { Aspect, Gate } from "./gates.ts";
import type { StepId } from "./ids.ts";
import { currentStep, type Job } from "./job.ts";
import { machineOf } from "./machine.ts";
import { stateKey } from "./state-key.ts";
import type { Frozen, Step } from "./step.ts";
import { weatherLimits } from "./weather.ts";

/** The part of a job that each aspect names. */
const PARTS: Record<Aspect, (f: Frozen) => unknown> = {
  pieces: (f) => f.plan.pieces,
  seams: (f) => f.plan.seams,
  poles: (f) => [f.plan.poles, f.plan.spec.centerPoleFt],
  stations: (f) => [f.plan.edges, f.plan.stations],
  anchors: (f) => f.plan.plates,
  sheet: (f) => f.brief.sheet,
  site: (f) => f.brief.site,
  ticket: (f) => f.brief.ticket,
  use: (f) => f.brief.use,
  crew: (f) => f.brief.crew,
};

/** What an amendment changes. */
export const changedAspects = (from: Frozen, to: Frozen): Aspect[] =>
  (Object.keys(PARTS) as Aspect[]).filter((a) => digest.of(PARTS[a](from)) !== digest.of(PARTS[a](to)));

/** Gates of the new script whose answers no longer count: newly asked, asked otherwise, or about something that changed. */
export function reopenedGates(from: Frozen, to: Frozen): string[] {
  const changed = new Set(changedAspects(from, to));
  const before = new Map([...from.script.steps, ...Object.values(from.script.escapes).flat()].map((s) => [s.id, s]));
  return [...to.script.steps, ...Object.values(to.script.escapes).flat()].flatMap((s) => {
    if (!s.gate) return [];
    const old = before.get(s.id)?.gate;
    const touched = s.gate.reopenedBy.some((a) => changed.has(a));
    return touched || !old || digest.of(question(old)) !== digest.of(question(s.gate)) ? [s.gate.id] : [];
  });
}

/** A gate as far as a change of it asks again. */
const question = (gate: Gate): unknown => ({ ...gate, check: kindOf(gate.check).question(gate.check) });

/** What an amendment would do to a job as it stands: the gates whose answers no longer count, and where it would go on. */
export function amendmentEffect(job: Job, to: Frozen): { readonly reopened: ReadonlySet<string>; readonly resumesAt: Step } {
  const { context } = job.snapshot;
  const reopened = new Set(reopenedGates(job.frozen, to));
  const at = context.resumeAt ?? currentStep(job)!.id;
  return { reopened, resumesAt: resumeStep(job.frozen, to, at, context.startedFrom, reopened) };
}

/**
 * The job under its amended plan. It goes on at the first call, up to where it stood, that has a reopened gate or is
 * new; with none, where it stood. Making safe is not left: then only where it goes on afterward changes.
 */
export function applyAmendment(job: Job, to: Frozen): Job {
  const { reopened, resumesAt: from } = amendmentEffect(job, to);
  const keep = <T>(record: Readonly<Record<string, T>>) =>
    Object.fromEntries(
      Object.entries(record).filter(
        ([id]) => !reopened.has(id) && to.script.steps.concat(...Object.values(to.script.escapes)).some((s) => s.gate?.id === id),
      ),
    );
  const { context } = job.snapshot;
  const makingSafe = context.resumeAt !== null;
  const machine = machineOf(to);
  const value = {
    ...(job.snapshot.value as object),
    procedure: makingSafe ? (job.snapshot.value as { procedure: object }).procedure : { [from.phase]: stateKey(from.id) },
  };
  const snapshot = machine.resolveState({
    value: value as never,
    context: {
      ...context,
      limits: weatherLimits(to.limits),
      answers: keep(context.answers),
      waived: keep(context.waived),
      resumeAt: makingSafe ? from.id : null,
    },
  });
  return { frozen: to, machine, snapshot, proposed: null, readBacks: {} };
}

/** The first call of the new script that has to be gone over again, or the one stood at, or the next that is left of it. */
function resumeStep(from: Frozen, to: Frozen, at: StepId, began: StepId, reopened: ReadonlySet<string>): Step {
  const known = new Set(from.script.steps.map((s) => s.id));
  const old = from.script.steps;
  const passed = new Set(old.slice(0, old.findIndex((s) => s.id === at) + 1).map((s) => s.id));
  const steps = to.script.steps;
  const last = steps.findLastIndex((s) => passed.has(s.id));
  // A strike is not gone back out of: what was checked on the way up is coming down.
  const striking = old.find((s) => s.id === at)?.phase === "struck";
  const first = steps.findIndex((s) => (striking ? s.phase === "struck" : s.id === began));
  const behind = steps.slice(Math.max(0, first), last + 1);
  const again = behind.find((s) => (s.gate ? reopened.has(s.gate.id) : !known.has(s.id)));
  return again ?? steps.find((s) => s.id === at) ?? steps[last + 1] ?? steps[last]!;
}
