import { describe, expect, it } from "vitest";
import { freeze } from "../../machines/install/freeze.ts";
import { madeUp } from "../../machines/rehearsal/made-up-job.ts";
import { SITUATIONS } from "../../machines/rehearsal/scene.ts";
import { storyOf } from "../../machines/rehearsal/story.ts";
import { EXAMPLES } from "../../machines/tent/examples.ts";
import { briefFor } from "../support/briefs.ts";
import { practiceOf } from "./play.ts";

const BIG = EXAMPLES.find(({ id }) => id === "example-60x120-split")!.spec;
const ONE_POLE = EXAMPLES[0]!.spec;
const kinds = (seed: number, trouble: "none" | "some" | "several", tent = BIG) =>
  storyOf(practiceOf(tent, { seed, trouble })).map(({ is, at }) => ({ is, at }));

describe("what happens in a rehearsal", () => {
  it("is the same for the same seed, and another for another", () => {
    expect(kinds(7, "several")).toEqual(kinds(7, "several"));
    expect(kinds(7, "several")).not.toEqual(kinds(8, "several"));
  });
  it("is nothing on a calm day, and more where several things go wrong", () => {
    expect(kinds(7, "none")).toEqual([]);
    expect(kinds(7, "several").length).toBeGreaterThan(kinds(7, "some").length);
  });
  it("always has a squall in the middle of the center poles, with somebody else in trouble where several go wrong", () => {
    for (const seed of [1, 2, 3]) {
      const centers = practiceOf(BIG).script.steps.filter(({ wordsKey }) => wordsKey === "lift.center");
      const there = kinds(seed, "several").filter(({ at }) => at === centers[Math.floor(centers.length / 2)]!.id);
      expect(there.map(({ is }) => is)).toContain("squall");
      expect(there.length).toBeGreaterThan(1);
    }
  });
  it("has all of its situations over some days, on ground of unknown kind too", () => {
    const brief = briefFor(BIG, { site: { soilKnown: false }, sheet: { pullTestLbf: 900 } });
    const practice = { way: "lead", trouble: "several", from: "sheet.atHand" } as const;
    const known = freeze(madeUp(brief, { ...practice, seed: 1 }, 0));
    const seen = new Set<string>();
    for (let seed = 1; seed <= 40; seed++)
      for (const { is } of storyOf({ ...known, brief: { ...known.brief, practice: { ...practice, seed } } })) seen.add(is);
    expect([...seen].sort()).toEqual([...SITUATIONS].sort());
  });
  it("never touches one gate twice", () => {
    const gates = storyOf(practiceOf(BIG, { seed: 5, trouble: "several" })).flatMap(({ brings }) =>
      "gate" in brings ? [brings.gate] : [],
    );
    expect(new Set(gates).size).toBe(gates.length);
  });
  it("begins no sooner than the rehearsal does", () => {
    const { steps } = practiceOf(BIG).script;
    const from = steps.findIndex(({ phase }) => phase === "interiorRaised");
    const story = storyOf(practiceOf(BIG, { seed: 5, trouble: "several", from: steps[from]!.id }));
    expect(story.every(({ at }) => steps.findIndex(({ id }) => id === at) >= from)).toBe(true);
  });
  it("is told on a tent with a single pole as well", () => {
    expect(kinds(3, "some", ONE_POLE).length).toBeGreaterThan(0);
  });
});
