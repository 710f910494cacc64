import type { Step } from "../install/step.ts";
import { own } from "../lookup/own.ts";
import { keyOf, type Mark, samePlace } from "./mark.ts";

/** Calls that go through the tent thing by thing, by their words. */
const FAMILY: Readonly<Record<string, string>> = {
  "lay.piece": "lay",
  "lace.technique": "lace",
  "lace.first": "lace",
  "lace.ring": "lace",
  "lace.out": "lace",
  "half.tied": "lace",
  "half.looked": "lace",
  "drive.edge": "drive",
  "count.corners": "count",
  "count.edge": "count",
  "pull.test": "pull",
  "pull.noFigure": "pull",
  "pull.inside.test": "pull",
  "pull.inside.noFigure": "pull",
  "raise.firstCorner": "raise",
  "raise.corner": "raise",
  "raise.edge": "raise",
  "under.in": "line",
  "under.out": "line",
  "lift.quarters": "line",
  "lift.center": "line",
  "lower.quarters": "line",
  "lower.center": "line",
  "tied.quarters": "tie",
  "tied.center": "tie",
  "strike.sides.pair": "sides",
  "strike.sides": "sides",
};

/** Going up and coming down are two families, of the same words. The count of those who tied every line is of none. */
function familyOf({ phase, wordsKey, params }: Step): string | null {
  const family = own(FAMILY, wordsKey);
  return family === undefined || (family === "line" && params.poles === undefined) ? null : `${phase} ${family}`;
}

/**
 * What was done of a call's kind before it, and what comes after it, in the order of the calls. `placeOf` gives a call's
 * place. Both are empty for a call that is one of its kind.
 */
export function besides(
  steps: readonly Step[],
  step: Step,
  placeOf: (step: Step) => readonly Mark[],
): { done: Mark[]; next: readonly Mark[] } {
  const family = familyOf(step);
  const at = steps.findIndex(({ id }) => id === step.id);
  if (family === null || at < 0) return { done: [], next: [] };
  const about = placeOf(step);
  const here = new Set(about.map(keyOf));
  const places = (of: readonly Step[]) => of.filter((s) => familyOf(s) === family).map(placeOf);
  const before = new Map(places(steps.slice(0, at)).flatMap((place) => place.map((mark) => [keyOf(mark), mark] as const)));
  return {
    done: [...before].flatMap(([key, mark]) => (here.has(key) ? [] : [mark])),
    next: places(steps.slice(at + 1)).find((place) => !samePlace(place, about)) ?? [],
  };
}
