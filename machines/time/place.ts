import type { Instant } from "../install/ids.ts";
import type { WorkTime } from "../record/work-time.ts";
import { type Phase, RAISE } from "./rates.ts";

/** What is kept of the job itself, as far as a forecast looks at it: part of its fold. */
export type Standing = { readonly phase: string; readonly lastAt: Instant; readonly no: number; readonly worked: WorkTime };
export type Stands = "before" | "raising" | "makingSafe" | "standing" | "striking" | "closed";
export type PhaseIs = "done" | "now" | "later" | "skipped";

/** What a job is doing. Before the first word to the guide the raise has not begun. */
export function standsOf({ phase, no }: Standing): Stands {
  if (phase === "closed" || phase === "standing" || phase === "makingSafe") return phase;
  if (phase === "struck") return "striking";
  return no === 1 ? "before" : "raising";
}

/** Whether a phase is behind, under way, ahead, or was left out because the job was stood down before it. */
export function phaseIs(phase: Phase, at: Standing): PhaseIs {
  const stands = standsOf(at);
  if (stands !== "before" && phase === at.phase) return "now";
  if (at.worked.done.some((p) => p === phase)) return "done";
  if (stands === "closed" || (stands === "striking" && RAISE.includes(phase))) return "skipped";
  // A changed plan can put the guide before or after what it had gone through.
  return stands === "raising" && RAISE.indexOf(phase) < RAISE.indexOf(at.phase as Phase) && RAISE.includes(phase) ? "done" : "later";
}
