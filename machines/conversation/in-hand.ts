import type { Step } from "../install/step.ts";

/** Whether a pole is in somebody's hands: in the middle of a lift or a lowering. */
export const isPoleInHand = (step: Step | null): boolean =>
  step !== null && step.resumeFrom !== null && (step.work === "lift" || step.work === "lower");

/** Whether something is begun that a stop does not leave as it is: it is finished or lowered first. */
export const isBegun = (step: Step | null): boolean => step !== null && step.resumeFrom !== null && step.phase !== "standing";
