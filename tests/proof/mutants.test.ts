import { describe, expect, it } from "vitest";
import { openJob } from "../../machines/install/job.ts";
import { briefOf, frozenOf, middleBrief, SMALL, START } from "./fixtures.ts";
import { gateMutants, guardMutant, guardsOf } from "./mutants.ts";

const small = frozenOf(briefOf(SMALL));

describe("the proof notices", () => {
  it.each([
    ["a small tent", small],
    ["a middle tent", frozenOf(middleBrief())],
  ])("every gate of %s that is taken away or changes its hardness", (_, frozen) => {
    expect(gateMutants(frozen).filter((m) => !m.caughtBy)).toEqual([]);
  });

  it.each(guardsOf(openJob(small, START).machine))("that the guard %s is stuck", { timeout: 60_000 }, (guard) => {
    expect([true, false].map((says) => guardMutant(small, guard, says)).filter((m) => !m.caughtBy)).toEqual([]);
  });
});
