import { describe, expect, it } from "vitest";
import { findings } from "./explore.ts";
import { briefOf, frozenOf, middleBrief, SMALL } from "./fixtures.ts";
import { ALL } from "./invariants.ts";
import { disagreements } from "./tent.ts";

const tents = [
  ["a small tent, 20×20 in one piece", frozenOf(briefOf(SMALL))],
  ["a middle tent, 80×100 in five pieces", frozenOf(middleBrief())],
] as const;

describe.each(tents)("%s", (_, frozen) => {
  let explored: ReturnType<typeof findings> | undefined;
  const once = () => {
    explored ??= findings(frozen);
    return explored;
  };

  it("has every gate of the table, as hard as the table says, and no other", () => {
    expect(disagreements(frozen)).toEqual([]);
  });

  it("is explored at every one of its calls", { timeout: 120_000 }, () => {
    const calls = frozen.script.steps.length + Object.values(frozen.script.ways).flat().length;
    expect(once().calls).toBe(calls);
  });

  it.each(ALL)("%s", { timeout: 120_000 }, (invariant) => {
    expect(once().found.get(invariant)).toBeUndefined();
  });
});
