import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { askable, questionFor } from "../../machines/rehearsal/questions/items.ts";
import { questionTexts } from "../../views/pages/learn/shown.ts";
import { en } from "../../views/text/en/en.ts";
import { frozenFor } from "../support/briefs.ts";
import { expectRight, rightOf } from "../support/questions.ts";
import { eighty, forty, hundred, sixty, twenty } from "../tent/tents.ts";

const jobs = {
  "a 20 by 20 on unknown soil": frozenFor(twenty, { site: { soilKnown: false }, use: { walls: false } }),
  "a 40 by 80 with its limits from the sheet": frozenFor(forty, { sheet: { raiseGustMph: 15, stopGustMph: 18, stakeLeanDeg: { from: 3, to: 8 } } }), // biome-ignore format: one line reads best
  "a 60 by 120 with centers first, tied at the end": frozenFor(sixty, { sheet: { interiorOrder: "centersFirst", interiorTies: "afterAll" } }), // biome-ignore format: one line reads best
  "an 80 by 100": frozenFor(eighty),
  "a 100 by 200 under a line": frozenFor(hundred, { site: { overheadKv: [7.2] } }),
};

describe.each(Object.entries(jobs))("any question about %s", (_name, frozen) => {
  it("is right, in words, among answers that are none", () => {
    const items = askable(frozen).map(({ id }) => id);
    fc.assert(
      fc.property(fc.constantFrom(...items), fc.integer({ min: 0, max: 2 ** 31 - 1 }), (item, seed) => {
        const question = questionFor(frozen, item, seed)!;
        const { ask, options } = questionTexts(question, en);
        expect(new Set(options.map(({ text }) => text)).size, JSON.stringify(options)).toBe(options.length);
        expect(ask.split(/\s+/).length, ask).toBeLessThanOrEqual(20);
        expect(rightOf(question)).not.toContain(undefined);
        expectRight(frozen, question);
      }),
      { numRuns: 4000 },
    );
  });
});
