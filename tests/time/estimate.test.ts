import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Quantities, type Quantity, workOf } from "../../machines/install/quantities.ts";
import type { Step } from "../../machines/install/step.ts";
import type { SpecInput } from "../../machines/tent/spec-input.ts";
import { estimate } from "../../machines/time/estimate.ts";
import { RATES, TIMED_PHASES } from "../../machines/time/rates.ts";
import { sharesOf } from "../../machines/time/shares.ts";
import { frozenWith } from "../support/time.ts";
import { eighty, forty, hundred, twenty } from "../tent/tents.ts";

const workFor = (people: number, tent = eighty) => workOf(frozenWith(people, tent))!;
const minutes = (phase: (typeof TIMED_PHASES)[number], q: Quantities, people: number): number => {
  const e = estimate(phase, q, people);
  return e.is === "estimate" ? e.minutes : Number.POSITIVE_INFINITY;
};

describe("the work of a job", () => {
  it("is counted from the plan of an 80 × 100 ft tent with split ends", () => {
    const { people, quantities, calls } = workFor(7);
    expect(people).toBe(7);
    expect(quantities).toMatchObject({ stakes: 100, plates: 50, stations: 36, tiedStations: 10, centerPoles: 2, quarterPoles: 10 });
    expect(quantities).toMatchObject({ seamFt: 240, seamHalves: 6, longestHalfFt: 40, perimeterFt: 360, clothSqFt: 8000, pieces: 5 });
    expect(calls.sectionsJoined).toBe(frozenWith(7).script.steps.filter((s) => s.phase === "sectionsJoined").length);
  });
  it("excludes watchers and managers from the people on site", () => {
    const frozen = frozenWith(5);
    const crew = [...frozen.brief.crew, { id: "m", role: "manager" as const }, { id: "w", role: "watcher" as const }];
    expect(workOf({ ...frozen, brief: { ...frozen.brief, crew } })!.people).toBe(5);
  });
  it("has pull tests only in unknown soil, and walls only if there are walls", () => {
    const unknown = workOf(frozenWith(5, eighty, { site: { soilKnown: false }, use: { walls: false } }))!.quantities;
    expect([unknown.pullTests, unknown.wallFt]).toEqual([5, 0]);
    expect([workFor(5).quantities.pullTests, workFor(5).quantities.wallFt]).toEqual([0, 360]);
  });
  it("is unknown for a plan without parts", () => {
    const frozen = frozenWith(5);
    expect(workOf({ ...frozen, plan: { widthFt: 40, lengthFt: 80 } as never })).toBeNull();
  });
});

describe("an estimate", () => {
  it("grows with the stakes and with the seams", () => {
    const { quantities: q } = workFor(6);
    expect(minutes("anchorsSet", { ...q, stakes: 150 }, 6)).toBeGreaterThan(minutes("anchorsSet", q, 6));
    expect(minutes("sectionsJoined", { ...q, seamFt: 300 }, 6)).toBeGreaterThan(minutes("sectionsJoined", q, 6));
  });
  it("shrinks from four people driving stakes to eight, but not beyond", () => {
    const { quantities } = workFor(6);
    const q = { ...quantities, plates: 0, stations: 0 };
    expect(minutes("anchorsSet", q, 8)).toBeLessThan(minutes("anchorsSet", q, 4));
    expect(minutes("anchorsSet", q, 30)).toBe(minutes("anchorsSet", q, 8));
  });
  it("has room for two people lacing each seam half, and the longest half sets the end", () => {
    const { quantities } = workFor(6);
    const lacing = (q: Quantities, people: number) => {
      const e = estimate("sectionsJoined", q, people);
      return e.is === "estimate" ? e.parts.find((p) => p.key === "lacing")! : null;
    };
    expect(lacing(quantities, 40)).toMatchObject({ people: 12, minutes: (40 * 0.6) / 2 });
    expect(lacing({ ...quantities, longestHalfFt: 60, seamFt: 260 }, 40)!.minutes).toBe((60 * 0.6) / 2);
  });
  it("needs a full team and a caller for a center pole", () => {
    expect(estimate("interiorRaised", workFor(4).quantities, 4)).toEqual({ is: "tooFew", people: 4, minPeople: 5 });
    expect(estimate("interiorRaised", workFor(4, twenty).quantities, 3).is).toBe("estimate");
  });
  it("does not shrink if more people do not make another team", () => {
    const { quantities } = workFor(6);
    const standing = (people: number) => {
      const e = estimate("interiorRaised", quantities, people);
      return e.is === "estimate" ? e.parts.find((p) => p.key === "quarterPoles")!.minutes : null;
    };
    expect(standing(6)).toBe(standing(5));
    expect(standing(7)).toBeLessThan(standing(6)!);
  });
  it("has no lacing for a one-piece top", () => {
    const e = estimate("sectionsJoined", workFor(6, twenty).quantities, 6);
    expect(e.is === "estimate" && e.parts.map((p) => p.key)).toEqual(["laying", "strapping"]);
  });
});

/** Whether a call is one of those at which a part is done: the same rule as in shares.ts. */
const isAt = ({ id, wordsKey }: Step, name: string) => wordsKey === name || id === name || id.startsWith(`${name}.`);

describe("the calls at which a part is done", () => {
  const ofUnknownGround = { site: { soilKnown: false }, use: { walls: true } };
  const scripts = new Map([eighty, forty, twenty].map((tent) => [tent, frozenWith(8, tent, ofUnknownGround).script]));
  const stepsOf = (tent: SpecInput, phase: (typeof TIMED_PHASES)[number]) => scripts.get(tent)!.steps.filter((s) => s.phase === phase);
  const parts = TIMED_PHASES.flatMap((phase) => RATES[phase].parts.map((part) => ({ phase, ...part })));
  it.each(parts)("$phase, $key: the 80 × 100 ft job with walls has at least one", ({ phase, calls }) => {
    const steps = stepsOf(eighty, phase);
    expect(calls.filter((name) => steps.some((s) => isAt(s, name)))).not.toEqual([]);
  });
  it("are all calls of some tent: those that the 80 × 100 ft one does not have are another's", () => {
    const named = (tent: SpecInput) =>
      parts.flatMap(({ phase, calls }) => calls.filter((name) => stepsOf(tent, phase).some((s) => isAt(s, name))));
    const inEighty = new Set(named(eighty));
    const missing = parts.flatMap(({ calls }) => calls).filter((name) => !inEighty.has(name));
    // Laced without a quarter ring on the way; tightened by its corners, as a top without seams is.
    expect(missing).toEqual(["lace.out", "tension.corners"]);
    expect(named(forty)).toContain("lace.out");
    expect(named(twenty)).toContain("tension.corners");
  });
  it("tell how far a phase has gotten: half the stakes driven are about half of the driving", () => {
    const { quantities, people } = workFor(6);
    const e = estimate("anchorsSet", quantities, people);
    if (e.is === "tooFew") throw new Error("six people should be enough");
    const steps = frozenWith(6).script.steps.filter((s) => s.phase === "anchorsSet");
    const shares = sharesOf(steps, e);
    const share = (id: string) => shares[steps.findIndex((s) => s.id === id)]!;
    const driving = ["AB", "BC", "CD", "DA"].map((edge) => share(`drive.${edge}`));
    expect((driving[0]! + driving[1]!) / driving.reduce((a, b) => a + b, 0)).toBeCloseTo(0.5, 1);
    expect(share("drive.AB")).toBeGreaterThan(share("soil") * 4);
  });
});

describe("an estimate for any tent and crew", () => {
  const quantities = fc.record<Quantities>({
    perimeterFt: fc.integer({ min: 60, max: 1040 }),
    stations: fc.integer({ min: 4, max: 200 }),
    tiedStations: fc.integer({ min: 4, max: 60 }),
    plates: fc.integer({ min: 4, max: 400 }),
    stakes: fc.integer({ min: 8, max: 800 }),
    pullTests: fc.integer({ min: 0, max: 4 }),
    pieces: fc.integer({ min: 1, max: 20 }),
    clothSqFt: fc.integer({ min: 400, max: 48_000 }),
    seamFt: fc.integer({ min: 0, max: 3000 }),
    seamHalves: fc.integer({ min: 1, max: 40 }),
    longestHalfFt: fc.integer({ min: 0, max: 60 }),
    centerPoles: fc.integer({ min: 0, max: 20 }),
    quarterPoles: fc.integer({ min: 0, max: 80 }),
    centerPoleFt: fc.integer({ min: 8, max: 60 }),
    wallFt: fc.integer({ min: 0, max: 1040 }),
  });
  const phase = fc.constantFrom(...TIMED_PHASES);
  const people = fc.integer({ min: 1, max: 60 });
  // Seam halves are excluded: more halves of the same total length are more places to work, which may be faster.
  const quantityNames = fc.constantFrom(...(["perimeterFt", "stations", "tiedStations", "plates", "stakes", "pullTests"] as const));
  const moreQuantityNames = fc.constantFrom(
    ...(["clothSqFt", "seamFt", "longestHalfFt", "centerPoles", "quarterPoles", "centerPoleFt", "wallFt"] as const),
  );

  it("is finite and at least the fixed minutes, or names a larger minimum crew", () =>
    fc.assert(
      fc.property(phase, quantities, people, (p, q, n) => {
        const e = estimate(p, q, n);
        if (e.is === "tooFew") expect(e.minPeople).toBeGreaterThan(n);
        else {
          expect(Number.isFinite(e.minutes)).toBe(true);
          expect(e.minutes).toBeGreaterThanOrEqual(RATES[p].fixedMinutes);
          for (const part of e.parts) expect(part.minutes).toBeGreaterThan(0);
        }
      }),
    ));
  it("never grows with more people", () =>
    fc.assert(
      fc.property(phase, quantities, people, (p, q, n) => {
        expect(minutes(p, q, n + 1)).toBeLessThanOrEqual(minutes(p, q, n) + 1e-9);
      }),
    ));
  it("never shrinks with more work", () =>
    fc.assert(
      fc.property(
        phase,
        quantities,
        people,
        fc.oneof(quantityNames, moreQuantityNames),
        fc.integer({ min: 1, max: 100 }),
        (p, q, n, what: Quantity, more) => {
          expect(minutes(p, { ...q, [what]: q[what] + more }, n)).toBeGreaterThanOrEqual(minutes(p, q, n) - 1e-9);
        },
      ),
    ));
});

it.each([
  ["80 × 100", eighty],
  ["40 × 80", forty],
  ["100 × 200", hundred],
  ["20 × 20", twenty],
])("every call of a %s ft tent has a share of its phase, and every part has calls", (_size, tent) => {
  const frozen = frozenWith(12, tent, { site: { soilKnown: false } });
  const { quantities, people } = workOf(frozen)!;
  for (const phase of TIMED_PHASES) {
    const steps = frozen.script.steps.filter((s) => s.phase === phase);
    const e = estimate(phase, quantities, people);
    if (e.is === "tooFew") throw new Error("twelve people should be enough");
    const shares = sharesOf(steps, e);
    expect(shares.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 9);
    expect(Math.min(...shares)).toBeGreaterThan(0);
    for (const part of e.parts) {
      const names = steps.filter((s) => part.calls.some((at) => isAt(s, at)));
      expect(names.length, part.key).toBeGreaterThan(0);
    }
  }
});
