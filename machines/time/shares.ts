import type { Step } from "../install/step.ts";
import type { Estimate } from "./estimate.ts";

/**
 * How much of a phase each of its calls takes, adding up to 1: fixed minutes evenly over all calls, each part over the calls
 * it is done at, by how many things a call names. A part whose calls this script has not is spread over all of them.
 */
export function sharesOf(steps: readonly Step[], phase: Extract<Estimate, { is: "estimate" }>): number[] {
  const minutes = steps.map(() => phase.fixed / steps.length);
  for (const part of phase.parts) {
    const weights = steps.map((step) => (part.at.some((name) => isAt(step, name)) ? thingsIn(step) : 0));
    const all = weights.reduce((a, b) => a + b, 0);
    for (const i of steps.keys()) minutes[i]! += part.minutes * (all > 0 ? weights[i]! / all : 1 / steps.length);
  }
  const total = minutes.reduce((a, b) => a + b, 0);
  return minutes.map((m) => m / total);
}

const isAt = ({ id, wordsKey }: Step, name: string): boolean => wordsKey === name || id === name || id.startsWith(`${name}.`);

/** Stations, poles or a count that a call names; 1 where it names none. */
function thingsIn({ params }: Step): number {
  const named = [params.stations, params.poles, params.count].find((n) => typeof n === "number" && n > 0);
  return typeof named === "number" ? named : 1;
}
