import type { LiveJob } from "../../machines/conversation/live-job.ts";
import { wantedParts } from "../../machines/install/checks/any-check.ts";
import { COMPETENT } from "../../machines/install/gates.ts";
import { currentStep, questionAt } from "../../machines/install/job.ts";
import { status } from "../../machines/install/status.ts";
import type { GateState, GuideState } from "../../views/pages/guide/state.ts";

/** Where a job stands, as far as whoever drives it looks: what of a guide page is no sentence. */
export type Stand = Pick<GuideState, "job" | "entry" | "revision" | "phase" | "step" | "makingSafe" | "closed"> & {
  readonly people: readonly Pick<GuideState["people"][number], "id" | "name" | "role">[];
  readonly gate: GateStand | null;
};
export type GateStand = Pick<GateState, "id" | "hard" | "check" | "status" | "want" | "roles" | "notBy">;

/** The same as the guide page's JSON has it, without building a page for it. */
export function standOf({ job, entries, names, now: { at } }: LiveJob): Stand {
  const { context } = job.snapshot;
  const step = currentStep(job);
  const name = (id: string) => names[id] ?? id;
  const gate = questionAt(job, at)?.gate ?? null;
  const first = context.answers[gate?.secondPersonTo ?? ""];
  const is = gate && status(gate, context, at);
  const shown = is === "unseen" ? context.answers[gate!.id] : undefined;
  return {
    job: entries.at(0)!.entry.job,
    entry: entries.at(-1)!.entry.no,
    revision: context.revision,
    phase: step?.phase ?? "closed",
    step: step?.id ?? "closed",
    makingSafe: context.resumeAt !== null,
    closed: step === null,
    people: job.frozen.brief.crew.map(({ id, role }) => ({ id, name: name(id), role })),
    gate: gate
      ? {
          id: gate.id,
          hard: gate.hard,
          check: gate.check,
          status: is!,
          want: wantedParts(gate.check, context),
          roles: shown ? COMPETENT : gate.roles,
          notBy: (shown ?? first) ? name((shown ?? first)!.by) : null,
        }
      : null,
  };
}
