import { describe, expect, it } from "vitest";
import { allSteps } from "../../machines/install/job.ts";
import { readBrief } from "../../server/edge/brief.ts";
import { calls } from "../../views/text/en/calls.ts";
import { limitText, sourceText } from "../../views/text/en/limits.ts";
import { feetInches, inches } from "../../views/text/en/names.ts";
import { brief } from "../support/app.ts";

const demo = brief();
const jobs = {
  "the demo": demo,
  "a one-piece 20 by 20 on unknown soil": {
    ...demo,
    tent: { widthFt: 20, lengthFt: 20, onePiece: true, splitEnds: false, spacingFt: 10, quarterRings: 0, centrePoleFt: 14 },
    site: { ...demo.site, soilKnown: false },
  },
  "a 100 by 200 with everything unknown": {
    ...demo,
    tent: { widthFt: 100, lengthFt: 200, splitEnds: true, onePiece: false, spacingFt: 10, quarterRings: 2, centrePoleFt: 34 },
    site: { ...demo.site, soilKnown: false, overheadKv: [null, 115, 1500] },
    sheet: { ...demo.sheet, pullTestLbf: 900, embedmentIn: null, interiorOrder: "centresFirst" },
    use: { occupants: null, permit: "unknown", fabricCertificate: "unknown", walls: false, hungLoads: true },
  },
};

describe.each(Object.entries(jobs))("every call of %s", (_name, input) => {
  const steps = allSteps(readBrief(input).frozen.script);

  it("has words short enough to hear, a reason, and for its gate a question and what to do instead", () => {
    for (const step of steps) {
      const words = calls[step.call];
      expect(words, step.call).toBeDefined();
      const said = [
        words!.say(step.of),
        words!.why,
        ...(step.gate ? [words!.ask?.(step.of) ?? "", words!.ifNot ?? "", limitText(step.gate), sourceText(step.gate.source)] : []),
      ];
      for (const text of said) {
        expect(text, step.id).toMatch(/\S/);
        expect(text, step.id).not.toMatch(/undefined|NaN|null|\[object/);
      }
      expect(said[0]!.length, step.id).toBeLessThan(200);
    }
  });

  it("has an id of its own and at most one gate, named like it", () => {
    expect(new Set(steps.map((s) => s.id)).size).toBe(steps.length);
    for (const step of steps) if (step.gate) expect(step.gate.id).toBe(step.id);
  });
});

it.each([
  [89 + 5.3125 / 12, "89 ft 5 5/16 in"],
  [100, "100 ft"],
  [0, "0 in"],
  [0.5, "6 in"],
])("%d ft reads %s on a tape", (ft, text) => expect(feetInches(ft)).toBe(text));

it("a fraction of an inch is read off in sixteenths, shortened", () =>
  expect([inches(5.5), inches(1.625), inches(0.25), inches(-0.5)]).toEqual(["5 1/2 in", "1 5/8 in", "1/4 in", "-1/2 in"]));
