import { isBegun } from "../../../machines/conversation/in-hand.ts";
import { currentStep, type Job } from "../../../machines/install/job.ts";
import type { Missing } from "../../../machines/install/refusals.ts";
import type { Words } from "../../text/words.ts";
import type { WeatherFacts } from "./weather.ts";

/** That the weather stops all work: why, and what to do now. */
export type StopState = { readonly why: string; readonly todo: string; readonly lightning: boolean };

/** What stands larger than any call while the weather says stop, by what is missing; `null` where it does not, or the job is closed. */
export function stopState(job: Job, facts: WeatherFacts, { stop, weatherPlan }: Words, missing: Missing | null): StopState | null {
  const step = currentStep(job);
  if (facts.is !== "stop" || step === null) return null;
  const tooLong = missing?.why === "gate" ? missing.tooLong : null;
  return {
    why: stop.why(facts),
    todo: tooLong ? weatherPlan.tooLong(tooLong.needMin, tooLong.leftMin) : stop.todo(isBegun(step), job.frozen.brief.site.stormShelter),
    lightning: facts.stops.lightningUntil !== null,
  };
}
