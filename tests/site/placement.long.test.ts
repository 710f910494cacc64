import fc from "fast-check";
import { expect, it } from "vitest";
import { findPlace } from "../../machines/site/placement.ts";
import { SEARCH } from "../../machines/site/shifts.ts";
import { at, rulesFor, sameAsByHand, searchedByHand, wanderingLines } from "../support/sites.ts";
import { forty, planOf, twenty } from "../tent/tents.ts";

it("a search is exact, over 300 sites and two tents", () => {
  fc.assert(sameAsByHand(planOf(twenty), { maxShiftFt: 5, maxTurnDeg: 3, turnCostFtPerDeg: 1 }), { numRuns: 200 });
  fc.assert(sameAsByHand(planOf(forty), { maxShiftFt: 4, maxTurnDeg: 4, turnCostFtPerDeg: 0.25 }), { numRuns: 100 });
});

it.each([1, 2, 3])("it is exact among pipes that wander, too: %i", (seed) => {
  const ground = wanderingLines(seed, { lines: 8, stretches: 20, stepFt: 5, spreadFt: 60 });
  const limits = { ...SEARCH, maxShiftFt: 12, maxTurnDeg: 6 };
  const place = { middle: at(0, 0), headingDeg: 0 };
  const { free, leastBad } = searchedByHand(planOf(forty), ground, { place, limits });
  const found = findPlace(planOf(forty), ground, { place, rules: rulesFor(ground), limits });
  expect(found).toMatchObject({ shift: (free ?? leastBad)!.shift });
});
