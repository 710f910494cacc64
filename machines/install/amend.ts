import { digest, type Hash } from "../digest/digest.ts";
import { isOnBaseline } from "../site/model.ts";
import { kindOf } from "./checks/registry.ts";
import { onSite } from "./crew.ts";
import type { Aspect, Gate } from "./gates.ts";
import type { EntryNo, GateId, StepId } from "./ids.ts";
import { type Job, leafOf } from "./job.ts";
import { machineOf } from "./machine.ts";
import { reopen } from "./reopen.ts";
import { indexOf } from "./script-index.ts";
import type { JobState } from "./state.ts";
import { stateKey } from "./state-key.ts";
import type { Frozen, Script, Step } from "./step.ts";
import { keysOf, thingsOf } from "./things-of.ts";
import { weatherLimits } from "./weather.ts";

/** The part of a job that each aspect names. */
const PARTS: Record<Aspect, (f: Frozen) => unknown> = {
  pieces: (f) => f.plan.pieces,
  seams: (f) => f.plan.seams,
  poles: (f) => [f.plan.poles, f.plan.spec.centerPoleFt],
  /** Where the tent stands on its site moves every mark. */
  stations: (f) => [f.plan.edges, f.plan.stations, ...wantedOf(f)],
  anchors: (f) => f.plan.plates,
  sheet: (f) => f.brief.sheet,
  site: ({ brief: { site } }) => [site.soilKnown, site.overheadKv],
  /** Lines, wires and things as they were entered, and the ground and the area that the ticket names. */
  neighbors: ({ brief: { siteModel } }) =>
    siteModel ? [siteModel.buried, siteModel.overhead, siteModel.things, siteModel.ground, siteModel.ticketArea] : null,
  /** Anchors that an engineer names in place of stakes, and the lines that are exposed for each. */
  engineered: ({ brief: { siteModel } }) => siteModel?.fixes?.filter(({ is }) => is === "engineeredAnchor") ?? [],
  /** What its anchors are screened by. */
  anchorage: ({ brief }) => brief.anchorage ?? null,
  /** Where everybody is sent to, and who is sent for. */
  places: ({ brief: { site } }) => [site.rallyPoint, site.stormShelter, site.firstAid, site.address],
  ticket: (f) => f.brief.ticket,
  use: (f) => f.brief.use,
  /** What the standing tent is watched by, and what is forecast. */
  weather: ({ brief: { weatherPlan, forecast } }) => [weatherPlan ?? null, forecast ?? null],
  /** Who is on the site; a role that is handed over brings nobody new. */
  crew: (f) =>
    onSite(f.brief.crew)
      .map((p) => p.id)
      .sort(),
};

/** The place that is wanted, where it is another one than the baseline itself. */
const wantedOf = ({ brief: { siteModel } }: Frozen): unknown[] => (!siteModel || isOnBaseline(siteModel) ? [] : [siteModel.wanted]);

/** What an amendment changes. */
export const changedAspects = (from: Frozen, to: Frozen): Aspect[] => {
  const [was, is] = [aspectsOf(from), aspectsOf(to)];
  return (Object.keys(PARTS) as Aspect[]).filter((a) => was[a] !== is[a]);
};

const aspects = new WeakMap<Frozen, Readonly<Record<Aspect, Hash>>>();
/** The digests of the parts of a job. Made once a frozen job. */
function aspectsOf(frozen: Frozen): Readonly<Record<Aspect, Hash>> {
  const known = aspects.get(frozen);
  if (known) return known;
  const made = Object.fromEntries(Object.entries(PARTS).map(([a, part]) => [a, digest.of(part(frozen))])) as Record<Aspect, Hash>;
  aspects.set(frozen, made);
  return made;
}

/** Gates of the new script whose answers no longer count: newly asked, asked otherwise, or about something that changed. */
export function reopenedGates(from: Frozen, to: Frozen): GateId[] {
  const changed = new Set<string>(changedAspects(from, to));
  const before = indexOf(from.script).gates;
  return [...indexOf(to.script).gates.values()].flatMap((gate) => {
    const old = before.get(gate.id);
    // What is over stays over.
    if (old && gate.past) return [];
    const touched = gate.reopenedBy.some((a) => changed.has(a));
    return touched || !old || questionOf(old) !== questionOf(gate) ? [gate.id] : [];
  });
}

const questions = new WeakMap<Gate, Hash>();
/** The digest of what is asked of an answer: where that is the same, an answer that was given stays good. Made once a gate. */
function questionOf(gate: Gate): Hash {
  const known = questions.get(gate);
  if (known) return known;
  const made = digest.of({ ...gate, check: kindOf(gate.check).question(gate.check) });
  questions.set(gate, made);
  return made;
}

/** What an amendment would do to a job as it stands: answers that no longer count, calls put behind it, and where it goes on. */
export type Effect = { readonly reopened: ReadonlySet<GateId>; readonly added: readonly StepId[]; readonly goesOnAt: Step };

export function amendmentEffect(job: Job, to: Frozen): Effect {
  const { context } = job.snapshot;
  const at = context.resumeAt ?? leafOf(job)?.id;
  if (at === undefined) throw new Error("a closed job has no plan to change");
  const goesOnAt = landing(job.frozen.script, to.script, at);
  return {
    reopened: new Set(reopenedGates(job.frozen, to).filter((id) => context.answers[id] || context.waived[id])),
    added: addedBehind(job.frozen.script, to.script, goesOnAt, context),
    goesOnAt,
  };
}

/** The job under its amended plan, where it stood. Making safe is not left: then only where it goes on afterward changes. */
export function applyAmendment(job: Job, to: Frozen, entry: EntryNo): Job {
  const { added, goesOnAt } = amendmentEffect(job, to);
  const { context } = job.snapshot;
  const { gates } = indexOf(to.script);
  const keep = <T>(record: Readonly<Record<GateId, T>>) => Object.fromEntries(Object.entries(record).filter(([id]) => gates.has(id)));
  const things = keysOf(thingsOf(to));
  const makingSafe = context.resumeAt !== null;
  const machine = machineOf(to);
  const value = {
    ...(job.snapshot.value as object),
    procedure: makingSafe ? (job.snapshot.value as { procedure: object }).procedure : { [goesOnAt.phase]: stateKey(goesOnAt.id) },
  };
  // Calls that are done again are answered again, counts of who went under included.
  const open = reopen(context, [...reopenedGates(job.frozen, to), ...added], "amendment", entry);
  const snapshot = machine.resolveState({
    value: value as never,
    context: {
      ...open,
      limits: weatherLimits(to.limits),
      answers: keep(open.answers),
      waived: keep(open.waived),
      reopened: keep(open.reopened),
      resumeAt: makingSafe ? goesOnAt.id : null,
      // What the plan no longer has is no longer out of use.
      outOfUse: Object.fromEntries(Object.entries(context.outOfUse).filter(([key]) => things.has(key))),
      added,
      doing: context.doing !== null && added[0] === context.doing ? context.doing : null,
    },
  });
  return { frozen: to, machine, snapshot, proposed: null, readBacks: {} };
}

/** Work that is not come upon by landing: a lift, a lowering or going under is entered on purpose. */
const ON_PURPOSE: ReadonlySet<Step["work"]> = new Set(["lift", "under", "lower"]);

/** The call stood at; where it is gone, the nearest earlier one that is left and is no other dangerous work. */
function landing(from: Script, to: Script, at: StepId): Step {
  const left = indexOf(to).at;
  const here = indexOf(from).at.get(at)!;
  const { work } = from.steps[here]!;
  for (let i = here; i >= 0; i--) {
    const old = from.steps[i]!;
    const step = to.steps[left.get(old.id) ?? -1];
    if (step && (i === here || (!ON_PURPOSE.has(step.work) && (step.work === null || step.work === work)))) return step;
  }
  return to.steps[0]!;
}

/**
 * Calls that the new script has before where the job goes on and the old one did not, or not for as many poles: one pole more in
 * a line is a lift of its own. And those that were waiting already.
 */
function addedBehind(from: Script, to: Script, goesOnAt: Step, { startedFrom, added }: JobState): StepId[] {
  const { at } = indexOf(to);
  const here = at.get(goesOnAt.id)!;
  const began = at.get(startedFrom) ?? 0;
  const isNew = (step: Step, i: number) => i >= began && i < here && (!indexOf(from).at.has(step.id) || hasMorePoles(from, step));
  return to.steps.flatMap((step, i) => (added.includes(step.id) || isNew(step, i) ? [step.id] : []));
}

const polesOf = (step: Step | undefined): string[] => (typeof step?.params.poles === "string" ? step.params.poles.split(" ") : []);
function hasMorePoles(from: Script, step: Step): boolean {
  const before = polesOf(from.steps[indexOf(from).at.get(step.id)!]);
  return polesOf(step).some((pole) => !before.includes(pole));
}
