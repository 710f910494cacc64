import { describe, expect, it } from "vitest";
import { exitsFor, overheadClearanceFt } from "../../machines/install/published-limits.ts";

describe('29 CFR 1926.1408 Table A: the value after "to" is included', () => {
  it.each([
    [50, 10],
    [50.1, 15],
    [200, 15],
    [201, 20],
    [350, 20],
    [500, 25],
    [750, 35],
    [1000, 45],
  ])("%d kV: %d ft", (kv, ft) => expect(overheadClearanceFt(kv)).toBe(ft));
  it("over 1,000 kV it is up to the line's owner or an engineer", () => expect(overheadClearanceFt(1001)).toBeNull());
  it("unknown voltage: 20 ft (1926.1407(a)(2))", () => expect(overheadClearanceFt(null)).toBe(20));
});

describe("International Fire Code Table 3103.12.2", () => {
  it.each([
    [199, 2, 72],
    [200, 3, 72],
    [499, 3, 72],
    [500, 4, 96],
    [999, 4, 96],
  ])("%d people: %d exits of %d in", (people, exits, widthIn) => expect(exitsFor(people)).toEqual({ exits, widthIn }));
  it("from 1,000 people it is up to the fire official", () => expect(exitsFor(1000)).toBeNull());
});
