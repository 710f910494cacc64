import type { LiveJob } from "../../machines/conversation/live-job.ts";
import { wantedParts } from "../../machines/install/checks/any-check.ts";
import { currentStep } from "../../machines/install/job.ts";
import { status } from "../../machines/install/status.ts";
import type { GateState, GuideState } from "../../views/pages/guide/state.ts";

/** Where a job stands, as far as whoever drives it looks: what of a guide page is no sentence. */
export type Stand = Pick<GuideState, "job" | "entry" | "revision" | "phase" | "step" | "makingSafe" | "closed"> & {
  readonly people: readonly Pick<GuideState["people"][number], "id" | "name" | "role">[];
  readonly gate: GateStand | null;
};
export type GateStand = Pick<GateState, "id" | "hard" | "check" | "status" | "want" | "roles" | "notBy">;

/** The same as the guide page's JSON has it, without building a page for it. */
export function standOf({ job, entries, names }: LiveJob, at: number): Stand {
  const { context } = job.snapshot;
  const step = currentStep(job);
  const name = (id: string) => names[id] ?? id;
  const first = context.answers[step?.gate?.secondPersonTo ?? ""];
  return {
    job: entries.at(0)!.entry.job,
    entry: entries.at(-1)!.entry.no,
    revision: context.revision,
    phase: step?.phase ?? "closed",
    step: step?.id ?? "closed",
    makingSafe: context.resumeAt !== null,
    closed: step === null,
    people: job.frozen.brief.crew.map(({ id, role }) => ({ id, name: name(id), role })),
    gate: step?.gate
      ? {
          id: step.gate.id,
          hard: step.gate.hard,
          check: step.gate.check,
          status: status(step.gate, context, at),
          want: wantedParts(step.gate.check, context),
          roles: step.gate.roles,
          notBy: first ? name(first.by) : null,
        }
      : null,
  };
}
