import type { StepId } from "./ids.ts";

/** A call's name in the chart: in a target, a dot means "child of", so ids lose theirs. */
export const stateKey = (id: StepId): string => id.replaceAll(".", "_");
