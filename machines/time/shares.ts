import type { Step } from "../install/step.ts";
import type { Estimate } from "./estimate.ts";

/**
 * The share of a phase that each of its calls takes; the shares add up to 1. Fixed minutes are split evenly over all calls.
 * Each part is split over its own calls in proportion to the items they name, or over all calls if the script has none of
 * its own.
 */
export function sharesOf(steps: readonly Step[], phase: Extract<Estimate, { is: "estimate" }>): number[] {
  const minutes = steps.map(() => phase.fixedMinutes / steps.length);
  for (const part of phase.parts) {
    const weights = steps.map((step) => (part.calls.some((name) => isDoneAt(step, name)) ? itemCount(step) : 0));
    const all = weights.reduce((a, b) => a + b, 0);
    for (const i of steps.keys()) minutes[i]! += part.minutes * (all > 0 ? weights[i]! / all : 1 / steps.length);
  }
  const total = minutes.reduce((a, b) => a + b, 0);
  return minutes.map((m) => m / total);
}

const isDoneAt = ({ id, wordsKey }: Step, name: string): boolean => wordsKey === name || id === name || id.startsWith(`${name}.`);

/** Number of stations, poles, or counted items that a call names; 1 if it names none. */
function itemCount({ params }: Step): number {
  const named = [params.stations, params.poles, params.count].find((n) => typeof n === "number" && n > 0);
  return typeof named === "number" ? named : 1;
}
