import type { Instant } from "../install/ids.ts";
import type { WorkTime } from "../record/work-time.ts";
import { type Phase, RAISE_PHASES } from "./rates.ts";

/** The part of a job's fold that a forecast needs. */
export type JobProgress = { readonly phase: string; readonly lastAt: Instant; readonly no: number; readonly worked: WorkTime };
export type JobStage = "before" | "raising" | "makingSafe" | "standing" | "striking" | "closed";
export type PhaseStatus = "done" | "now" | "later" | "skipped";

/** The stage of a job. Until somebody speaks to the guide, the raise has not begun. */
export function stageOf({ phase, no }: JobProgress): JobStage {
  if (phase === "closed" || phase === "standing" || phase === "makingSafe") return phase;
  if (phase === "struck") return "striking";
  return no === 1 ? "before" : "raising";
}

/** Whether a phase is done, under way, still to come, or skipped because the job was stood down before it. */
export function phaseStatus(phase: Phase, at: JobProgress): PhaseStatus {
  const stands = stageOf(at);
  if (stands !== "before" && phase === at.phase) return "now";
  if (at.worked.done.some((p) => p === phase)) return "done";
  if (stands === "closed" || (stands === "striking" && RAISE_PHASES.includes(phase))) return "skipped";
  // An amended plan can move the guide back before a finished phase, or forward past an unfinished one.
  return stands === "raising" && RAISE_PHASES.indexOf(phase) < RAISE_PHASES.indexOf(at.phase as Phase) && RAISE_PHASES.includes(phase)
    ? "done"
    : "later";
}
